/** Tables for a spreadsheet, in the order they are offered. */
export const planTables = ["list", "cuts", "flags", "runs", "holes", "loads", "stock", "prices"] as const;
export type PlanTable = (typeof planTables)[number];
