package rallywright.web.signin;

import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.springframework.security.crypto.factory.PasswordEncoderFactories;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import rallywright.store.ClubStore;
import rallywright.store.Settings;

/** The coach's password: only a salted hash is kept, under a name that no export contains. */
@Component
public final class CoachPassword {

  /** The fewest characters; assumption of this project. */
  public static final int FEWEST = 10;

  /** The most bytes that the hash (bcrypt) takes into account. */
  private static final int MOST_BYTES = 72;

  private static final String SETTING = Settings.SECRET_PREFIX + "password";

  private final ClubStore store;
  private final PasswordEncoder hashes = PasswordEncoderFactories.createDelegatingPasswordEncoder();
  private final AtomicInteger round = new AtomicInteger();

  /** The password of a club. */
  public CoachPassword(ClubStore store) {
    this.store = store;
  }

  /** Whether one was set. */
  public boolean isSet() {
    return store.settings().get(SETTING).isPresent();
  }

  /** Whether this is the password; false where none was set. */
  public boolean matches(String offered) {
    Optional<String> hash = store.settings().get(SETTING);
    return hash.isPresent() && bytes(offered) <= MOST_BYTES && hashes.matches(offered, hash.get());
  }

  /**
   * Sets the password; every other device has to sign in again.
   *
   * @param password the new one
   * @throws IllegalArgumentException if it is too short or too long
   */
  public void set(String password) {
    int characters = password.codePointCount(0, password.length());
    if (characters < FEWEST || password.isBlank()) {
      throw new IllegalArgumentException(
          "The password has %d characters; it needs at least %d. Maybe four words in a row."
              .formatted(characters, FEWEST));
    }
    if (bytes(password) > MOST_BYTES) {
      throw new IllegalArgumentException(
          "The password is too long; at most %d plain letters are taken. Maybe four words."
              .formatted(MOST_BYTES));
    }
    store.settings().put(SETTING, Objects.requireNonNull(hashes.encode(password)));
    round.incrementAndGet();
  }

  /** Grows with every change, so that sessions from before can be told. */
  int round() {
    return round.get();
  }

  private static int bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8).length;
  }
}
