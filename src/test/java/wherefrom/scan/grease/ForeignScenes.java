package wherefrom.scan.grease;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.BiPredicate;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;

/** Small frames on which no issued tag is: what must never be read as one. */
final class ForeignScenes {
  private static final int HEIGHT = 240;

  /** Whose words stand beside a foreign code in our frame. */
  private static final TagCode ANY = new TagCode(TagType.ACTION_CARD, 0, 1, 1);

  /** What lies there, and the one text it may be read as. */
  record Foreign(String kind, GreaseScene scene, String text) {}

  private ForeignScenes() {}

  static Foreign of(long number, int engine, List<TagCode> issued) {
    SplittableRandom random = new SplittableRandom(number * 0x9E3779B97F4A7C15L + 1);
    TagCode some = issued.get(random.nextInt(issued.size()));
    return switch (random.nextInt(6)) {
      case 0 -> tag("other engine", random, other(random, engine));
      case 1 -> tag("neighbor", random, neighbour(random, engine));
      case 2 -> tag("retired", random, retired(some, random));
      case 3 -> foreignCode(random, true);
      case 4 -> foreignCode(random, false);
      default -> nothing(random);
    };
  }

  private static TagCode other(SplittableRandom random, int engine) {
    int number = random.nextInt(TagCode.MOST_ENGINE);
    return new TagCode(
        TagType.PART, number == engine ? number + 1 : number, 1 + random.nextInt(96), 1);
  }

  /** Items the job never printed. */
  private static TagCode neighbour(SplittableRandom random, int engine) {
    return new TagCode(TagType.PART, engine, 97 + random.nextInt(400), 1);
  }

  private static TagCode retired(TagCode code, SplittableRandom random) {
    int issue = code.issue() > 1 && random.nextBoolean() ? code.issue() - 1 : code.issue() + 1;
    return new TagCode(code.type(), code.engine(), code.item(), issue);
  }

  private static Foreign tag(String kind, SplittableRandom random, TagCode code) {
    return new Foreign(kind, scene(random, LabelArt.of(code)), code.digits());
  }

  private static Foreign foreignCode(SplittableRandom random, boolean framed) {
    String text = "box " + random.nextInt(1_000_000);
    try {
      ByteMatrix matrix =
          Encoder.encode(
                  text,
                  random.nextBoolean() ? ErrorCorrectionLevel.L : ErrorCorrectionLevel.Q,
                  Map.of(EncodeHintType.QR_MASK_PATTERN, random.nextInt(8)))
              .getMatrix();
      BiPredicate<Integer, Integer> dark = (row, column) -> matrix.get(column, row) == 1;
      LabelArt art =
          framed
              ? LabelArt.framed(ANY, matrix.getWidth(), dark)
              : LabelArt.plain(matrix.getWidth(), dark);
      return new Foreign(framed ? "code in frame" : "foreign code", scene(random, art), text);
    } catch (WriterException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static Foreign nothing(SplittableRandom random) {
    SplittableRandom coin = random.split();
    return new Foreign(
        "random modules",
        scene(random, LabelArt.framed(ANY, 21, (row, column) -> coin.nextBoolean())),
        "");
  }

  private static Damage damage(SplittableRandom random) {
    Family family = Family.FIRST.get(random.nextInt(Family.FIRST.size()));
    return Damage.of(family, 1 + random.nextInt(Family.GRADES), random);
  }

  private static GreaseScene scene(SplittableRandom random, LabelArt label) {
    return new GreaseScene(HEIGHT * 16 / 9, HEIGHT, label, damage(random), random.nextLong(), 0.8);
  }
}
