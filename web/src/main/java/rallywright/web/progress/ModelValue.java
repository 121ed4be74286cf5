package rallywright.web.progress;

/**
 * One value of the model in words.
 *
 * @param words what it is
 * @param value how large, with its unit
 * @param source where it comes from
 */
public record ModelValue(String words, String value, String source) {}
