/**
 * Signing in: the one-time key of the start, the password of an open network, the session.
 *
 * <p>Start with {@link rallywright.web.signin.SignInPages}. Keys are kept as hashes only.
 */
@NullMarked
package rallywright.web.signin;

import org.jspecify.annotations.NullMarked;
