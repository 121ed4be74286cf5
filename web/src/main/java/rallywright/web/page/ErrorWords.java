package rallywright.web.page;

/**
 * A failed request in words.
 *
 * @param title two or three words
 * @param sentence what happened and what to try
 */
record ErrorWords(String title, String sentence) {

  /** The words for a status; a sentence that the page itself gave goes first. */
  static ErrorWords of(int status, String said) {
    ErrorWords usual = usual(status);
    return said.isEmpty() ? usual : new ErrorWords(usual.title(), said);
  }

  private static ErrorWords usual(int status) {
    return switch (status) {
      case 400 ->
          new ErrorWords(
              "Not understood",
              "The request could not be read, so nothing was stored. Maybe the address was cut off;"
                  + " go back and try again.");
      case 403 ->
          new ErrorWords(
              "Not allowed",
              "This page was open too long or comes from somewhere else, so nothing was stored. Go"
                  + " back, load the page again and repeat the last step.");
      case 404 ->
          new ErrorWords(
              "Nothing here",
              "There is no page at this address. Maybe it was mistyped, or what it showed was"
                  + " deleted.");
      case 405 ->
          new ErrorWords(
              "Not understood",
              "This address cannot be used in that way, so nothing was stored. Go back and use the"
                  + " buttons of the page.");
      case 413 ->
          new ErrorWords(
              "Too large",
              "The file is too large, so nothing was stored. At most 2 MB are taken; maybe send it"
                  + " in parts.");
      case 429 ->
          new ErrorWords("Wait a moment", "Too many attempts. Wait a minute, then try once more.");
      default ->
          new ErrorWords(
              "Something broke",
              "Rallywright could not do this; everything stored before is safe. Try once more; if"
                  + " it happens again, look at the words where Rallywright was started.");
    };
  }
}
