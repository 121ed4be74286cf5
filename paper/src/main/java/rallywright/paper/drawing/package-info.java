/**
 * The court drawn to scale as SVG: the same code for page, phone and paper.
 *
 * <p>Start with {@link rallywright.paper.drawing.CourtDrawing}. It never uses colour to tell things
 * apart, and no style attribute, which strict pages refuse.
 */
@NullMarked
package rallywright.paper.drawing;

import org.jspecify.annotations.NullMarked;
