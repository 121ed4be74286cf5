/**
 * What every page shares: the layout, forms and their errors, units, estimates, error pages.
 *
 * <p>Start with {@link rallywright.web.page.PageFrame}: a controller asks {@link
 * rallywright.web.page.PageFrames} for the frame of its page, puts it into the model as {@code
 * frame} and returns the name of its template, which calls {@code @template.layout.page(frame =
 * frame, content = @`…`)}. A form is read with {@link rallywright.web.page.FormReader}; when it
 * {@code failed()}, the handler sets status 422 and shows its page again with {@code form()};
 * otherwise it stores, leaves a sentence by {@link rallywright.web.page.Confirmation} and
 * redirects. Its template opens with {@code <form class="form" method="post" novalidate>} and
 * {@code @template.page.formhead}, then uses {@code @template.page.field} (one line; numbers too,
 * with {@code inputmode}), {@code area} (several lines), {@code pick} (one of several), {@code
 * ticks} (any of several); each ties hint and error to its control. The words of the stylesheet
 * stand at its head. Something that is not in the club is answered by {@link
 * rallywright.web.page.NotHere}. Estimates are drawn by {@link rallywright.web.page.Estimate} and
 * {@code @template.page.estimate}; lengths, speeds and temperatures are written by {@link
 * rallywright.web.page.Units} from {@code frame.units()}. For partial updates put {@code hx-…}
 * attributes on elements: the layout loads htmx and sends the token against forged requests.
 *
 * <p>No feature is shown here, and nothing is stored.
 */
@NullMarked
package rallywright.web.page;

import org.jspecify.annotations.NullMarked;
