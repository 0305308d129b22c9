/** What leaves the desk: files, and what is copied. */

import { make } from "../show.js";

/** @param {Blob} content @param {string} name */
export function saved(content, name) {
  const address = URL.createObjectURL(content);
  const link = make("a", { href: address, download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/**
 * Copy a text in several forms; false where the browser does not let pages copy. The newer clipboard
 * call takes the styles out of HTML under a strict policy, and is not there without TLS.
 * @param {Record<string, string>} forms by media type
 */
export function copied(forms) {
  let done = false;
  const give = (/** @type {ClipboardEvent} */ event) => {
    for (const [type, text] of Object.entries(forms)) event.clipboardData?.setData(type, text);
    event.preventDefault();
    done = true;
  };
  document.addEventListener("copy", give);
  document.execCommand("copy");
  document.removeEventListener("copy", give);
  return done;
}
