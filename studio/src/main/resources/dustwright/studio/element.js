// An element of the page with its attributes, what a click on it does (on), and what stands in it.
export function element(name, attributes = {}, ...children) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (key === 'on') made.addEventListener('click', value); else made.setAttribute(key, value);
  }
  made.append(...children);
  return made;
}
