package wherefrom.job;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import wherefrom.parts.Whereabouts;

/**
 * A tray held against the bench plan: what lies where it is recorded, what lies here and is
 * recorded elsewhere, and what is recorded as out on the bench and is not on the picture.
 *
 * @param right out on the bench, as recorded
 * @param elsewhere lying here, but recorded as in the engine, fitted, away, missing or retired
 * @param absent recorded as out on the bench, not read on this picture; it may lie on another tray,
 *     or be one of those that could not be read
 */
public record TrayCheck(
    List<Tray.Lying> right, List<Tray.Lying> elsewhere, List<PartRecord> absent) {
  public TrayCheck {
    right = List.copyOf(right);
    elsewhere = List.copyOf(elsewhere);
    absent = List.copyOf(absent);
  }

  /** Holds a tray against what a job records. */
  public static TrayCheck of(EngineJob job, Tray tray) {
    Set<Integer> here =
        tray.parts().stream().map(lying -> lying.part().part().item()).collect(Collectors.toSet());
    return new TrayCheck(
        tray.parts().stream().filter(TrayCheck::isOut).toList(),
        tray.parts().stream().filter(lying -> !isOut(lying)).toList(),
        job.parts().stream()
            .filter(part -> part.where() == Whereabouts.OUT)
            .filter(part -> !here.contains(part.part().item()))
            .sorted(Comparator.comparing(part -> part.part().item()))
            .toList());
  }

  private static boolean isOut(Tray.Lying lying) {
    return lying.part().where() == Whereabouts.OUT;
  }

  /** Whether everything lies as recorded and nothing else is wanted here. */
  public boolean agrees() {
    return elsewhere.isEmpty() && absent.isEmpty();
  }
}
