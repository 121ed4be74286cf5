/**
 * The machinery of printing: templates to text, text to PDF, an address to a code for phones.
 *
 * <p>Start with {@link rallywright.paper.press.PdfPress}. It knows nothing of sessions or players.
 */
@NullMarked
package rallywright.paper.press;

import org.jspecify.annotations.NullMarked;
