// Takes the key from the address's fragment, which is never sent to the server, and posts it.
const key = new URLSearchParams(location.hash.slice(1)).get('key');
if (key) {
  history.replaceState(null, '', location.pathname);
  const form = document.getElementById('sign-in');
  form.elements.namedItem('key').value = key;
  form.submit();
}
