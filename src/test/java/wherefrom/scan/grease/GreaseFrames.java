package wherefrom.scan.grease;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;

/** The frames of the bench: the same seed always gives the same frame. */
final class GreaseFrames {
  private GreaseFrames() {}

  /** The tags of one engine job: 96 parts, 28 place cards, 4 action cards; some are reprints. */
  static List<TagCode> issued(int engine) {
    List<TagCode> codes = new ArrayList<>();
    for (int item = 1; item <= 96; item++) {
      codes.add(new TagCode(TagType.PART, engine, item, item % 11 == 0 ? 2 : 1));
    }
    for (int item = 1; item <= 28; item++) {
      codes.add(new TagCode(TagType.PLACE_CARD, engine, item, 1));
    }
    for (int item = 1; item <= 4; item++) {
      codes.add(new TagCode(TagType.ACTION_CARD, 0, item, 1));
    }
    return codes;
  }

  static long seed(Family family, int grade, int number, int height) {
    return (family.ordinal() * 8L + grade) * 1_000_003L + number * 7919L + height;
  }

  /** The tag in the frame with this seed. */
  static TagCode pick(List<TagCode> issued, long seed) {
    return issued.get(new SplittableRandom(seed ^ 0x5EED).nextInt(issued.size()));
  }

  static GreaseScene scene(Family family, int grade, int number, int height, TagCode code) {
    long seed = seed(family, grade, number, height);
    Damage damage = Damage.of(family, grade, new SplittableRandom(seed ^ 0xDA));
    return new GreaseScene(height * 16 / 9, height, LabelArt.of(code), damage, seed);
  }

  static GreaseFrame frame(Family family, int grade, int number, int height, TagCode code) {
    return scene(family, grade, number, height, code).next(code.digits());
  }
}
