/**
 * What the coach sets once: units and password.
 *
 * <p>Start with {@code SettingsPages}. Nothing of a player is shown here.
 */
@NullMarked
package rallywright.web.settings;

import org.jspecify.annotations.NullMarked;
