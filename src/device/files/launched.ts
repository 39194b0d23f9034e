/** Files the phone opens with this app, where it offers that. Gives each to who takes them; knows no kind of file. */

/** The part of the browser's queue that is used; absent in most browsers. */
interface LaunchQueue {
  setConsumer(take: (launch: { readonly files?: readonly Handle[] }) => void): void;
}
interface Handle {
  getFile?(): Promise<File>;
}

/** `take` is called for each file waiting now, and for each that comes later while nobody else takes them. */
export function takeLaunched(window: object, take: (file: File) => void): void {
  if (!("launchQueue" in window)) return;
  // Its shape is the browser's; what it lacks is passed over.
  const queue = window.launchQueue as LaunchQueue;
  queue.setConsumer(({ files = [] }) => {
    for (const handle of files) void handle.getFile?.().then(take);
  });
}
