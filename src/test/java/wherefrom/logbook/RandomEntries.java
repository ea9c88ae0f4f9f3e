package wherefrom.logbook;

import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.Spot;
import wherefrom.engine.ValveSide;
import wherefrom.inspection.Subject;
import wherefrom.job.entry.Act;
import wherefrom.job.entry.BoltHole;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.PartSort;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.BigPartName;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.parts.TagType;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.size.GoodsSize;

/** Entries of every kind, filled with anything that their types allow, from a seed. */
final class RandomEntries {
  private static final List<String> TEXTS =
      List.of(
          "",
          "plain",
          "two\nlines\r\nand a \"quote\" and a \\",
          "Größe, 部品, 𝄞, \u0000\u0007\u2028",
          "{\"seq\":1,\"crc\":\"00000000\"}",
          "long ".repeat(400));
  private static final List<Place> PLACES =
      ReadyLayouts.all().stream()
          .flatMap(layout -> Places.of(layout, PartKind.all()).stream())
          .toList();

  private final Random random;

  RandomEntries(Random random) {
    this.random = random;
  }

  static List<Class<?>> kinds() {
    return List.of(JobEntry.class.getPermittedSubclasses());
  }

  JobEntry any() {
    return (JobEntry) value(kinds().get(random.nextInt(kinds().size())));
  }

  JobEntry of(Class<?> kind) {
    return (JobEntry) value(kind);
  }

  /** An entry that is no act. */
  private JobEntry single() {
    JobEntry entry = any();
    return entry instanceof Act ? single() : entry;
  }

  private Object value(Type type) {
    if (type == Act.class) {
      return new Act(List.of(single(), single(), single()));
    }
    if (type instanceof ParameterizedType generic) {
      return collection(generic);
    }
    Class<?> raw = (Class<?>) type;
    if (raw == int.class || raw == Integer.class) {
      return random.nextInt();
    }
    if (raw == long.class || raw == Long.class) {
      return random.nextLong();
    }
    if (raw == boolean.class) {
      return random.nextBoolean();
    }
    if (raw == double.class || raw == Double.class) {
      return random.nextGaussian();
    }
    if (raw == String.class) {
      return TEXTS.get(random.nextInt(TEXTS.size()));
    }
    if (raw == BigDecimal.class) {
      return BigDecimal.valueOf(random.nextInt(100_000), random.nextInt(8));
    }
    if (raw == Amount.class) {
      // Those of one entry are in one unit.
      return new Amount((BigDecimal) value(BigDecimal.class), Unit.MICROMETRE);
    }
    if (raw == PartSort.class) {
      return PartSort.of((String) value(String.class));
    }
    if (raw == Article.class) {
      return Article.read((String) value(String.class));
    }
    if (raw == GoodsSize.class) {
      return size();
    }
    if (raw == Change.class) {
      return change();
    }
    if (raw == Subject.Beside.class) {
      TagType of = random.nextBoolean() ? TagType.BAG : TagType.BIG_PART;
      return new Subject.Beside(of, 1 + random.nextInt(999));
    }
    if (raw == Spot.class) {
      return PLACES.get(random.nextInt(PLACES.size())).spot();
    }
    if (raw == Place.class) {
      return PLACES.get(random.nextInt(PLACES.size()));
    }
    if (raw.isEnum()) {
      Object[] constants = raw.getEnumConstants();
      return constants[random.nextInt(constants.length)];
    }
    if (raw.isRecord()) {
      return record(raw);
    }
    throw new IllegalStateException("no values for " + type);
  }

  private GoodsSize size() {
    List<GoodsSize> sizes =
        List.of(
            GoodsSize.none(),
            GoodsSize.standard(),
            new GoodsSize.OfSide(ValveSide.EXHAUST),
            new GoodsSize.Worded("for the one that was stuck"),
            GoodsSize.of(GoodsSize.Sense.UNDER, (Amount) value(Amount.class)),
            GoodsSize.of(GoodsSize.Sense.OVER, (Amount) value(Amount.class)));
    return sizes.get(random.nextInt(sizes.size()));
  }

  private Object collection(ParameterizedType generic) {
    Type[] of = generic.getActualTypeArguments();
    if (generic.getRawType() == Optional.class) {
      return random.nextBoolean() ? Optional.of(value(of[0])) : Optional.empty();
    }
    List<Object> values = new ArrayList<>();
    for (int count = random.nextInt(4); count > 0; count--) {
      values.add(value(of[of.length - 1]));
    }
    if (generic.getRawType() == Set.class) {
      return new TreeSet<>(values);
    }
    if (generic.getRawType() == Map.class) {
      Map<Object, Object> map = new LinkedHashMap<>();
      values.forEach(each -> map.put(value(of[0]), each));
      return map;
    }
    return values;
  }

  /** Its size stands within its words. */
  private Change change() {
    ChangeKind kind = (ChangeKind) value(ChangeKind.class);
    String where = (String) value(String.class);
    BigDecimal step = BigDecimal.valueOf(random.nextInt(100), 3);
    return random.nextBoolean()
        ? Change.sized(kind, where, Optional.of(new Amount(step, Unit.INCH)))
        : Change.noting(kind, where, (String) value(String.class));
  }

  private Optional<Integer> percent() {
    return random.nextBoolean() ? Optional.of(random.nextInt(101)) : Optional.empty();
  }

  private Optional<Amount> length() {
    return random.nextBoolean() ? Optional.of((Amount) value(Amount.class)) : Optional.empty();
  }

  private Object record(Class<?> type) {
    RecordComponent[] components = type.getRecordComponents();
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    if (type == BoltHole.class) {
      return new BoltHole(random.nextInt(), percent(), percent(), length());
    }
    if (type == BigPartName.class) {
      BigPartKind kind = (BigPartKind) value(BigPartKind.class);
      return new BigPartName(kind, "left", kind == BigPartKind.OWN ? "dipstick tube" : "");
    }
    Object[] values = Arrays.stream(components).map(each -> value(each.getGenericType())).toArray();
    try {
      Constructor<?> constructor = type.getDeclaredConstructor(types);
      constructor.setAccessible(true);
      return constructor.newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(type.toString(), e);
    }
  }
}
