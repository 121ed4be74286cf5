/**
 * The command line: one class per command.
 *
 * <p>Start with {@link rallywright.cli.Rallywright}. Nothing is computed here.
 */
@NullMarked
package rallywright.cli;

import org.jspecify.annotations.NullMarked;
