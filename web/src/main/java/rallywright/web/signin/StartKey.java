package rallywright.web.signin;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.concurrent.atomic.AtomicBoolean;
import org.springframework.stereotype.Component;

/** The key printed at the start: 160 random bits, good for one sign-in. */
@Component
public class StartKey {

  private static final int BYTES = 20;

  private final String key;
  private final AtomicBoolean used = new AtomicBoolean();

  /** Makes a fresh key. */
  public StartKey() {
    byte[] bytes = new byte[BYTES];
    new SecureRandom().nextBytes(bytes);
    key = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** The key as it is printed for the coach. */
  public String reveal() {
    return key;
  }

  /** Takes the key if it is the right one and was not used before. */
  boolean take(String offered) {
    boolean right =
        MessageDigest.isEqual(
            key.getBytes(StandardCharsets.UTF_8), offered.getBytes(StandardCharsets.UTF_8));
    return right && used.compareAndSet(false, true);
  }
}
