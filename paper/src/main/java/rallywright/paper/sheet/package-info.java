/**
 * What stands on a court sheet, as plain words and pictures ready for the templates.
 *
 * <p>Start with {@link rallywright.paper.sheet.SheetView}. Nothing here is worked out from plans;
 * no health notes and no limits can be held.
 */
@NullMarked
package rallywright.paper.sheet;

import org.jspecify.annotations.NullMarked;
