package wherefrom.job.tray;

import static java.util.stream.Collectors.toSet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import wherefrom.job.EngineJob;
import wherefrom.job.PartRecord;
import wherefrom.parts.PartKind;
import wherefrom.parts.Whereabouts;
import wherefrom.text.Words;

/**
 * A tray held against the bench plan: what lies where it is recorded, what lies here and is
 * recorded elsewhere, and what is recorded as out on the bench and is not on the picture.
 *
 * @param right out on the bench, as recorded
 * @param elsewhere lying here, but recorded as in the engine, fitted, away, missing or retired
 * @param absent of the kinds on this picture, recorded as out on the bench, not read here; it may
 *     lie on another tray, or be one of those that could not be read
 * @param otherKinds how many parts of kinds of which none is on this picture are out on the bench:
 *     they are taken to lie elsewhere
 */
public record TrayCheck(
    List<Tray.Lying> right,
    List<Tray.Lying> elsewhere,
    List<PartRecord> absent,
    Map<PartKind, Integer> otherKinds) {
  public TrayCheck {
    right = List.copyOf(right);
    elsewhere = List.copyOf(elsewhere);
    absent = List.copyOf(absent);
    otherKinds = Map.copyOf(otherKinds);
  }

  /** Holds a tray against what a job records. */
  public static TrayCheck of(EngineJob job, Tray tray) {
    Set<Integer> here =
        tray.parts().stream().map(lying -> lying.part().part().item()).collect(toSet());
    Set<PartKind> kinds =
        tray.parts().stream().map(lying -> lying.part().part().kind()).collect(toSet());
    List<PartRecord> absent = new ArrayList<>();
    Map<PartKind, Integer> others = new EnumMap<>(PartKind.class);
    job.parts().stream()
        .filter(part -> part.where() == Whereabouts.OUT)
        .filter(part -> !here.contains(part.part().item()))
        .sorted(Comparator.comparing(part -> part.part().item()))
        .forEach(
            part -> {
              if (kinds.contains(part.part().kind())) {
                absent.add(part);
              } else {
                others.merge(part.part().kind(), 1, Integer::sum);
              }
            });
    return new TrayCheck(
        tray.parts().stream().filter(TrayCheck::isOut).toList(),
        tray.parts().stream().filter(lying -> !isOut(lying)).toList(),
        absent,
        others);
  }

  private static boolean isOut(Tray.Lying lying) {
    return lying.part().where() == Whereabouts.OUT;
  }

  /** "16 rockers, 12 lifters": what else is out on the bench; empty where nothing is. */
  public String otherWords() {
    return otherKinds.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(other -> counted(other.getKey(), other.getValue()))
        .collect(Collectors.joining(", "));
  }

  private static String counted(PartKind kind, int count) {
    return Words.count(count, kind.word(), kind.plural());
  }

  /** Whether everything lies as recorded and nothing else of these kinds is wanted here. */
  public boolean agrees() {
    return elsewhere.isEmpty() && absent.isEmpty();
  }
}
