/** Hands a file to whoever sits before the page, as a download. */
export function saveFile(content: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(content);
  link.download = name;
  link.click();
  // the browser has taken it by the next turn; kept longer, every picture would stay in memory
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}
