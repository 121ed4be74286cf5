/**
 * Signing in: the one-time key of the start, the password of an open network, the session.
 *
 * <p>Start with {@link rallywright.web.signin.SignInPages}. Who is signed in is a {@link
 * rallywright.web.signin.Visitor}, which a page gets by {@code Visitor.of(principal)}; other ways
 * in, such as an on-court key, check their key (asking {@link rallywright.web.signin.Attempts}
 * first), then call {@link rallywright.web.signin.SignedIn#enter}; addresses that others than the
 * coach may open are added as {@link rallywright.web.signin.Door} beans. Keys and passwords are
 * kept as hashes only.
 */
@NullMarked
package rallywright.web.signin;

import org.jspecify.annotations.NullMarked;
