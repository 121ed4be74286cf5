package rallywright.web.sessions;

import rallywright.paper.press.QrPicture;

/**
 * What lets a phone in.
 *
 * @param picture the code to scan
 * @param address the address to type instead
 * @param key the key to type there
 */
public record PhoneCode(QrPicture picture, String address, String key) {}
