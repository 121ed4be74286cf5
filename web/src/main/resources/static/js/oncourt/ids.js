// Names for events, made on the phone: UUIDs of version 7 (RFC 9562), which sort by time.

/** The random bytes come from getRandomValues, which also exists without a secure context. */
export function newId(now = Date.now()) {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  let rest = now;
  for (let i = 5; i >= 0; i--) {
    bytes[i] = rest % 256;
    rest = Math.floor(rest / 256);
  }
  bytes[6] = 0x70 | (bytes[6] & 0x0f);
  bytes[8] = 0x80 | (bytes[8] & 0x3f);
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)]
    .join('-');
}

/** A short name for this phone, the same after a reload. */
export function phoneName() {
  const made = `phone ${newId().slice(-8)}`;
  try {
    const kept = localStorage.getItem('rallywright-phone');
    if (kept) {
      return kept;
    }
    localStorage.setItem('rallywright-phone', made);
  } catch {
    // A browser that keeps nothing: the name lasts as long as the page.
  }
  return made;
}
