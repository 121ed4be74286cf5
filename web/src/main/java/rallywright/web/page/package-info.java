/**
 * What every page shares: the layout, units, the words for errors at a field.
 *
 * <p>Start with {@link rallywright.web.page.PageFrame}. No feature is shown here.
 */
@NullMarked
package rallywright.web.page;

import org.jspecify.annotations.NullMarked;
