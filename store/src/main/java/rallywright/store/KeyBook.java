package rallywright.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Keys that open pages without an account. Only their SHA-256 hashes are kept: a key has 160 random
 * bits, so that it can neither be guessed nor be found from its hash.
 */
public final class KeyBook {

  private static final int KEY_BYTES = 20;

  private final Database database;
  private final SecureRandom random;
  private final Clock clock;

  KeyBook(Database database, SecureRandom random, Clock clock) {
    this.database = database;
    this.random = random;
    this.clock = clock;
  }

  /** What a key opens. */
  public enum Kind {
    /** The on-court page of one session. */
    ON_COURT,
    /** Signing in at this computer, once. */
    START,
    /** A page that is shown to others. */
    SHARE
  }

  /**
   * Makes a key.
   *
   * @param kind what it opens
   * @param scope what it is limited to, for example the id of a session; may be empty
   * @param expiresAtMillis until when it holds, in milliseconds since 1970 (UTC)
   * @return the key in the clear, 27 characters that need no escaping in an address; it is never
   *     shown again
   */
  public String issue(Kind kind, String scope, long expiresAtMillis) {
    byte[] bytes = new byte[KEY_BYTES];
    random.nextBytes(bytes);
    String key = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    database.change(
        client ->
            client
                .sql(
                    """
                    insert into access_key (hash, kind, scope, expires_at)
                    values (:hash, :kind, :scope, :expires)
                    """)
                .param("hash", hash(key))
                .param("kind", kind.name())
                .param("scope", scope)
                .param("expires", expiresAtMillis)
                .update());
    return key;
  }

  /**
   * The scope of a key that holds.
   *
   * @param kind what it must open
   * @param key the key in the clear
   * @param nowMillis the time, in milliseconds since 1970 (UTC)
   * @return its scope; empty if it is unknown, of another kind, expired or revoked
   */
  public Optional<String> check(Kind kind, String key, long nowMillis) {
    return database.read(client -> scope(client, kind, key, nowMillis));
  }

  /**
   * The scope of a key that holds, and then revokes it: of two that come with the same key only one
   * is let in.
   *
   * @param kind what it must open
   * @param key the key in the clear
   * @param nowMillis the time, in milliseconds since 1970 (UTC)
   * @return its scope, as {@link #check}
   */
  public Optional<String> checkOnce(Kind kind, String key, long nowMillis) {
    return database.change(
        client -> {
          Optional<String> scope = scope(client, kind, key, nowMillis);
          if (scope.isPresent()) {
            revoke(client, key);
          }
          return scope;
        });
  }

  /**
   * Ends a key at once.
   *
   * @param key the key in the clear
   */
  public void revoke(String key) {
    database.change(client -> revoke(client, key));
  }

  /**
   * Ends all keys of a kind and scope at once.
   *
   * @param kind what they open
   * @param scope their scope
   */
  public void revokeAll(Kind kind, String scope) {
    database.change(
        client ->
            client
                .sql(
                    """
                    update access_key set revoked_at = :now
                    where kind = :kind and scope = :scope and revoked_at is null
                    """)
                .param("now", clock.millis())
                .param("kind", kind.name())
                .param("scope", scope)
                .update());
  }

  /**
   * Throws away keys that no longer hold.
   *
   * @param beforeMillis those that ended before this time, in milliseconds since 1970 (UTC)
   */
  public void removeExpired(long beforeMillis) {
    database.change(
        client ->
            client
                .sql("delete from access_key where expires_at < :before or revoked_at < :before")
                .param("before", beforeMillis)
                .update());
  }

  private int revoke(JdbcClient client, String key) {
    return client
        .sql("update access_key set revoked_at = :now where hash = :hash and revoked_at is null")
        .param("now", clock.millis())
        .param("hash", hash(key))
        .update();
  }

  private static Optional<String> scope(JdbcClient client, Kind kind, String key, long now) {
    return client
        .sql(
            """
            select scope from access_key
            where hash = :hash and kind = :kind and expires_at > :now and revoked_at is null
            """)
        .param("hash", hash(key))
        .param("kind", kind.name())
        .param("now", now)
        .query(String.class)
        .optional();
  }

  private static String hash(String key) {
    try {
      return HexFormat.of()
          .formatHex(
              MessageDigest.getInstance("SHA-256").digest(key.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException problem) {
      throw new IllegalStateException("Every Java has SHA-256.", problem);
    }
  }
}
