package rallywright.web;

import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Where the server listens and under which address phones reach it.
 *
 * @param host the address to listen on
 * @param port the port, 0 for a free one
 * @param publicAddress the address under which phones reach the server, or null where unknown
 * @param tls the certificate for an encrypted connection, or null for none
 */
public record Reach(String host, int port, @Nullable String publicAddress, @Nullable Tls tls) {

  /** The address that only this computer reaches. */
  public static final String THIS_COMPUTER = "127.0.0.1";

  private static final Set<String> LOOPBACK = Set.of(THIS_COMPUTER, "localhost", "::1");
  private static final Set<String> EVERY_ADDRESS = Set.of("0.0.0.0", "::");

  /**
   * A certificate and its key, both PEM files.
   *
   * @param certificate the certificate, with its chain where there is one
   * @param key the private key, not encrypted
   */
  public record Tls(Path certificate, Path key) {
    /** Checks that both files can be read. */
    public Tls {
      readable("certificate (--tls-cert)", certificate, "-----BEGIN CERTIFICATE-----");
      readable("key (--tls-key)", key, "PRIVATE KEY-----");
    }

    private static void readable(String what, Path file, String mark) {
      if (!Files.isReadable(file) || Files.isDirectory(file)) {
        throw new IllegalArgumentException(
            "The %s, %s, must be a PEM file that can be read. Maybe the path is wrong."
                .formatted(what, file));
      }
      String text = text(what, file);
      if (!text.contains(mark) || text.contains("ENCRYPTED")) {
        throw new IllegalArgumentException(
            ("The %s, %s, must be a PEM file, not encrypted, that holds \"%s\". Maybe the two"
                    + " files were mixed up.")
                .formatted(what, file, mark));
      }
    }

    /** Byte by byte, since a file that is no PEM may hold anything. */
    private static String text(String what, Path file) {
      try {
        return Files.readString(file, StandardCharsets.ISO_8859_1);
      } catch (IOException unreadable) {
        throw new IllegalArgumentException(
            "The %s, %s, could not be read to its end. Maybe copy it again.".formatted(what, file),
            unreadable);
      }
    }
  }

  /** Checks port and public address. */
  public Reach {
    if (host.isBlank() || host.contains("/") || host.contains(" ")) {
      throw new IllegalArgumentException(
          "The host (" + host + ") must be an address of this computer. Maybe 0.0.0.0 for all.");
    }
    if (port < 0 || port > 65535) {
      throw new IllegalArgumentException(
          "The port (" + port + ") must be from 0 to 65535. Maybe 8817.");
    }
    if (publicAddress != null) {
      publicAddress = withoutLastSlash(publicAddress);
      nameOf(publicAddress);
    }
  }

  /** Only this computer, without encryption. */
  public static Reach thisComputer(int port) {
    return new Reach(THIS_COMPUTER, port, null, null);
  }

  /** Whether other computers can reach the server. */
  public boolean opensToNetwork() {
    return !LOOPBACK.contains(host);
  }

  /** Whether it listens on every address of this computer. */
  public boolean listensEverywhere() {
    return EVERY_ADDRESS.contains(host);
  }

  /** The name or number in the public address, or null where there is none. */
  public @Nullable String publicName() {
    return publicAddress == null ? null : nameOf(publicAddress);
  }

  /** The address for this computer's own browser, without a path. */
  public String localAddress(int boundPort) {
    String name = listensEverywhere() ? THIS_COMPUTER : host;
    String bracketed = name.contains(":") ? "[" + name + "]" : name;
    return (tls == null ? "http://" : "https://") + bracketed + ":" + boundPort;
  }

  private static String withoutLastSlash(String address) {
    return address.endsWith("/") ? address.substring(0, address.length() - 1) : address;
  }

  private static String nameOf(String address) {
    String sentence =
        "The public address ("
            + address
            + ") must be http:// or https://, a name and, if need be, a port. Maybe"
            + " http://192.168.1.20:8817.";
    try {
      URI uri = URI.create(address);
      boolean web = "http".equals(uri.getScheme()) || "https".equals(uri.getScheme());
      String path = uri.getRawPath();
      if (!web || uri.getHost() == null || (path != null && !path.isEmpty())) {
        throw new IllegalArgumentException(sentence);
      }
      return uri.getHost().toLowerCase(Locale.ROOT);
    } catch (IllegalArgumentException wrong) {
      throw new IllegalArgumentException(sentence, wrong);
    }
  }
}
