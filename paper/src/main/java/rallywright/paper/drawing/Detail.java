package rallywright.paper.drawing;

/** How much a drawing shows, by where it is seen. */
public enum Detail {
  /** On the sheet: no words in the picture, a fixed small size, described for PDF readers. */
  PAPER,
  /** Small on a page, beside others on the same scale: no words in the picture. */
  SMALL,
  /** Large on a page or phone: roles, kitchen and net by name. */
  LABELLED
}
