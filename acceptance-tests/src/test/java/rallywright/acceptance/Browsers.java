package rallywright.acceptance;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.nio.file.Path;
import java.util.List;

/** Chromium without a window, in the two sizes that pages are made for. */
final class Browsers implements AutoCloseable {

  /** How Chromium is started here: it reaches nobody but this computer. */
  static final List<String> ARGUMENTS =
      List.of(
          "--no-sandbox",
          "--disable-gpu",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync");

  private static final double PATIENCE_MS = 90_000;

  private final Playwright playwright = Playwright.create();
  private final Browser browser;

  Browsers() {
    browser =
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions()
                    .setExecutablePath(Path.of(System.getProperty("chromium", "/usr/bin/chromium")))
                    .setHeadless(true)
                    .setArgs(ARGUMENTS));
  }

  /** A fresh profile the size of a phone, with touch. */
  BrowserContext phone() {
    return patient(browser.newContext(phoneOptions()));
  }

  /** A phone whose owner has agreed to trust the server's own certificate. */
  BrowserContext trustingPhone() {
    return patient(browser.newContext(phoneOptions().setIgnoreHTTPSErrors(true)));
  }

  private static Browser.NewContextOptions phoneOptions() {
    return new Browser.NewContextOptions()
        .setViewportSize(390, 844)
        .setHasTouch(true)
        .setIsMobile(true)
        .setDeviceScaleFactor(2);
  }

  /** A fresh profile with options of its own. */
  BrowserContext with(Browser.NewContextOptions options) {
    return patient(browser.newContext(options));
  }

  /** A fresh profile the size of a laptop. */
  BrowserContext laptop() {
    return patient(browser.newContext(new Browser.NewContextOptions().setViewportSize(1366, 768)));
  }

  /** Several browsers and programs share a small machine: waiting longer is no failure. */
  private static BrowserContext patient(BrowserContext context) {
    context.setDefaultTimeout(PATIENCE_MS);
    context.setDefaultNavigationTimeout(PATIENCE_MS);
    return context;
  }

  /** Does what leads to another page, or to the same anew, and waits for that page. */
  static void toNextPage(Page page, Runnable step) {
    page.evaluate("() => document.documentElement.setAttribute('data-left', '')");
    step.run();
    page.locator("html:not([data-left]) main")
        .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.ATTACHED));
    page.waitForLoadState();
  }

  @Override
  public void close() {
    playwright.close();
  }
}
