/** Makes elements. Words go in as text, so nothing that anybody typed is ever read as markup. */

/** @typedef {Node | string | null | undefined | false} Child */

/**
 * @template {keyof HTMLElementTagNameMap} Name
 * @param {Name} name
 * @param {Record<string, string | (() => void)>} [attributes] a function listens for a press
 * @param {...Child} children
 * @returns {HTMLElementTagNameMap[Name]}
 */
export function make(name, attributes = {}, ...children) {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes))
    if (typeof value === "function") element.addEventListener("click", pressed(value));
    else element.setAttribute(key, value);
  element.append(...children.filter(isShown));
  return element;
}

/**
 * Make an element of a drawing.
 * @template {keyof SVGElementTagNameMap} Name
 * @param {Name} name
 * @param {Record<string, string | number>} [attributes]
 * @param {...Child} children
 * @returns {SVGElementTagNameMap[Name]}
 */
export function draw(name, attributes = {}, ...children) {
  const element = document.createElementNS("http://www.w3.org/2000/svg", name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
  element.append(...children.filter(isShown));
  return element;
}

/**
 * @param {Child} child
 * @returns {child is Node | string}
 */
function isShown(child) {
  return child !== null && child !== undefined && child !== false;
}

/** @param {() => void} does */
function pressed(does) {
  return (/** @type {Event} */ event) => {
    event.preventDefault();
    does();
  };
}
