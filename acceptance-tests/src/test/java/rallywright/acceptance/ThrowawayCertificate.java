package rallywright.acceptance;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.Key;
import java.security.KeyStore;
import java.util.Base64;
import java.util.List;

/**
 * A certificate for this computer that nobody has signed, made by the keytool of the running Java.
 *
 * @param certificate the certificate as PEM
 * @param key its private key as PEM
 */
record ThrowawayCertificate(Path certificate, Path key) {

  private static final String NAME = "court";
  private static final String PASSWORD = "throwaway";

  static ThrowawayCertificate in(Path folder)
      throws IOException, InterruptedException, GeneralSecurityException {
    Path store = folder.resolve("court.p12");
    Process keytool =
        new ProcessBuilder(
                List.of(
                    Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
                    "-genkeypair",
                    "-alias",
                    NAME,
                    "-keyalg",
                    "EC",
                    "-groupname",
                    "secp256r1",
                    "-validity",
                    "2",
                    "-dname",
                    "CN=localhost",
                    "-ext",
                    "SAN=dns:localhost,ip:127.0.0.1",
                    "-storetype",
                    "PKCS12",
                    "-keystore",
                    store.toString(),
                    "-storepass",
                    PASSWORD))
            .inheritIO()
            .start();
    if (keytool.waitFor() != 0) {
      throw new IllegalStateException("keytool made no certificate");
    }
    KeyStore made = KeyStore.getInstance("PKCS12");
    try (InputStream in = Files.newInputStream(store)) {
      made.load(in, PASSWORD.toCharArray());
    }
    Key key = made.getKey(NAME, PASSWORD.toCharArray());
    return new ThrowawayCertificate(
        pem(folder.resolve("cert.pem"), "CERTIFICATE", made.getCertificate(NAME).getEncoded()),
        pem(folder.resolve("key.pem"), "PRIVATE KEY", key.getEncoded()));
  }

  private static Path pem(Path file, String what, byte[] content) throws IOException {
    String body = Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(content);
    return Files.writeString(
        file, "-----BEGIN %s-----%n%s%n-----END %s-----%n".formatted(what, body, what));
  }
}
