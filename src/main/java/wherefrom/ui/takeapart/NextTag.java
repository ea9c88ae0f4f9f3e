package wherefrom.ui.takeapart;

import wherefrom.job.bags.BigPartRecord;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Touch;

/** The words of the tag that says that the next is out. */
final class NextTag {
  private final TagKey tag;
  private final Touch touch;

  NextTag(TagKey tag, Touch touch) {
    this.tag = tag;
    this.touch = touch;
  }

  /**
   * With large letters what to mark has no room but here; nor has it on upright glass, once what
   * came out stands in the place of the name.
   *
   * @param first what to mark before the part moves; may be empty
   * @param named whether the name of the part stands on the glass, and beside it what to mark
   */
  void out(String what, String first, boolean named) {
    if (touch.isLarge() && !first.isEmpty()) {
      tag.setWords(what, first);
    } else if (touch.isLarge()) {
      tag.setWordsSparing(what, "or scan its tag");
    } else {
      tag.setWordsSparing(what, named ? "" : first);
    }
  }

  void off(BigPartRecord part) {
    tag.setWords("It is off: " + part.words(), touch.isLarge() ? "bag its bolts first" : "");
  }
}
