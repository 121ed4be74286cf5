package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SignInIT {

  @Test
  void printedAddress_openedOnce_signsInAndIsRefusedTheSecondTime(@TempDir Path data) {
    try (StartedProgram program = StartedProgram.serve(data);
        Browsers browsers = new Browsers()) {
      Page first = browsers.laptop().newPage();
      first.navigate(program.signInAddress());
      first.waitForURL(program.address() + "/");
      assertThat(first.locator("h1").textContent()).isEqualTo("Today");

      Page second = browsers.phone().newPage();
      second.navigate(program.signInAddress());
      second.locator("#key-error").waitFor();
      assertThat(second.locator("#key-error").textContent()).contains("used before");
    }
  }
}
