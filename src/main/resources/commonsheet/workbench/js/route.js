// Addresses within the workbench: #folder, #record?file=a.json&at=s3.

/** The page that the address names, and its parameters. */
export function route() {
  const [page, query] = location.hash.slice(1).split('?');
  return { page: page || 'folder', parameters: new URLSearchParams(query ?? '') };
}

/** The address of a page, for links. */
export function address(page, parameters = {}) {
  const query = new URLSearchParams(parameters);
  return `#${page}${query.size ? `?${query}` : ''}`;
}

/** Goes to a page. */
export function go(page, parameters) {
  location.hash = address(page, parameters);
}
