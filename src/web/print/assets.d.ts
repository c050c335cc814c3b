/** The address of a file that the build puts beside the page. */
declare module "*.ttf?url" {
  const address: string;
  export default address;
}
