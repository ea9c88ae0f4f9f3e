package wherefrom.inspection;

import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wherefrom.engine.Site;
import wherefrom.engine.Spot;
import wherefrom.parts.TagType;

/** What a look or a measurement is about. */
public sealed interface Subject {

  /** What the function for its kind makes of it. */
  default <R> R match(
      Function<APart, R> part, Function<AFeature, R> feature, Function<Beside, R> beside) {
    if (this instanceof APart one) {
      return part.apply(one);
    }
    if (this instanceof AFeature one) {
      return feature.apply(one);
    }
    return beside.apply((Beside) this);
  }

  /** The name in files: {@code #12} or {@code lobe@3EX}. Never changes. */
  String key();

  /** A tagged part, by its item number. */
  record APart(int item) implements Subject {
    @Override
    public String key() {
      return "#" + item;
    }
  }

  /**
   * A surface or shaft that carries no tag.
   *
   * @param site one of those that {@link Feature#where} names
   */
  record AFeature(Feature feature, Site site) implements Subject {
    /** The one at a site that is given by its key. */
    public AFeature(Feature feature, String where) {
      this(feature, Site.of(where));
    }

    @Override
    public String key() {
      return feature.key() + "@" + where();
    }

    /** The key of its site. */
    public String where() {
      return site.key();
    }

    /** The number of its cylinder, main or cam bearing; 0 of what has none. */
    public int number() {
      return site.findNumber().orElse(0);
    }

    /** Whether it is at a spot; a journal or a housing is at both halves of its bearing. */
    public boolean isAt(Spot spot) {
      return switch (feature.reach()) {
        case VALVE, CAM_BEARING -> site.equals(new Site.At(spot));
        case CYLINDER ->
            spot.match(valve -> false, this::isIn, this::isIn, main -> false, bearing -> false);
        case MAIN -> site.equals(Site.around(spot));
        case BANK, WHOLE -> false;
      };
    }

    private boolean isIn(Spot spot) {
      return site.findCylinder().isPresent() && site.findCylinder().equals(spot.findCylinder());
    }

    /** {@code cylinder 3, exhaust, cam lobe}, {@code main 2, main journal}, {@code crankshaft}. */
    public String words() {
      return switch (feature.reach()) {
        case MAIN -> feature.word() + " " + number();
        case CYLINDER -> "cylinder " + number() + ", " + feature.word();
        case BANK -> feature.word() + ", " + where() + " bank";
        case VALVE, CAM_BEARING -> spotWords() + feature.word();
        case WHOLE -> feature.word();
      };
    }

    private String spotWords() {
      return site.findSpot().map(spot -> spot.words() + ", ").orElse("");
    }
  }

  /**
   * A bag or a big part: it can be photographed; no look and no reading is about it.
   *
   * @param type {@link TagType#BAG} or {@link TagType#BIG_PART}
   * @param number the number on its tag
   */
  record Beside(TagType type, int number) implements Subject {
    public Beside {
      if (type != TagType.BAG && type != TagType.BIG_PART) {
        throw new IllegalArgumentException("neither a bag nor a big part: " + type);
      }
    }

    @Override
    public String key() {
      return name(type) + "#" + number;
    }

    /** {@code bag 3}, {@code big part 12}. */
    public String words() {
      return type.word() + " " + number;
    }

    private static String name(TagType type) {
      return type == TagType.BAG ? "bag" : "big-part";
    }
  }

  Pattern PART = Pattern.compile("#\\d{1,6}");

  Pattern BESIDE = Pattern.compile("(bag|big-part)#(\\d{1,6})");

  static Subject ofBag(int number) {
    return new Beside(TagType.BAG, number);
  }

  static Subject ofBigPart(int number) {
    return new Beside(TagType.BIG_PART, number);
  }

  static Subject ofPart(int item) {
    return new APart(item);
  }

  /** Where the feature with this key is; empty of all else. */
  static Optional<Site> findSite(String key) {
    return find(key)
        .flatMap(
            one ->
                one.match(
                    part -> Optional.empty(),
                    at -> Optional.of(at.site()),
                    any -> Optional.empty()));
  }

  /** The bag or the big part with this key; empty of all else. */
  static Optional<Beside> findBeside(String key) {
    return find(key)
        .flatMap(one -> one.match(part -> Optional.empty(), at -> Optional.empty(), Optional::of));
  }

  /** The subject with this key; empty when the text is no such key. */
  static Optional<Subject> find(String key) {
    if (PART.matcher(key).matches()) {
      return Optional.of(new APart(Integer.parseInt(key.substring(1))));
    }
    Matcher beside = BESIDE.matcher(key);
    if (beside.matches()) {
      int number = Integer.parseInt(beside.group(2));
      return Optional.of(beside.group(1).equals("bag") ? ofBag(number) : ofBigPart(number));
    }
    int at = key.indexOf('@');
    return at < 0
        ? Optional.empty()
        : Feature.find(key.substring(0, at))
            .map(feature -> new AFeature(feature, key.substring(at + 1)));
  }
}
