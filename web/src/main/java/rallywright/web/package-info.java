/**
 * Starts the web server and wires its parts.
 *
 * <p>Start with {@link rallywright.web.WebServer}. Pages live in the packages named after their
 * feature.
 */
@NullMarked
package rallywright.web;

import org.jspecify.annotations.NullMarked;
