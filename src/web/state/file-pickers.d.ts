/** File choosers that some browsers have and the compiler's own library leaves out. */
interface FileTypes {
  readonly types: readonly {
    readonly description: string;
    readonly accept: Readonly<Record<string, readonly string[]>>;
  }[];
}

interface Window {
  showOpenFilePicker?(options: FileTypes): Promise<FileSystemFileHandle[]>;
  showSaveFilePicker?(options: FileTypes & { readonly suggestedName: string }): Promise<FileSystemFileHandle>;
}

interface FileSystemFileHandle {
  requestPermission?(options: { readonly mode: "readwrite" }): Promise<PermissionState>;
}
