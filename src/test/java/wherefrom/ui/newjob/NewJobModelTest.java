package wherefrom.ui.newjob;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import wherefrom.engine.ReadyLayouts;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;

class NewJobModelTest {
  private final NewJobModel model = new NewJobModel(UnitSystem.INCH, LocalDate.of(2026, 3, 2));

  @Test
  void whatMustGoBackAndHasNoTagIsNamedUntilItHasOne() {
    assertThat(model.untagged())
        .startsWith("No tag yet: ")
        .contains("rod caps", "main caps", "valves", "pistons")
        .doesNotContain("pushrods", "keeper");
    model.trackAll(PartKind.recommended());
    assertThat(model.untagged()).isEmpty();
    assertThat(model.tracks(PartKind.ROD_CAP)).isTrue();
    model.track(PartKind.ROD_CAP, false);
    assertThat(model.untagged())
        .isEqualTo("No tag yet: rod caps. They must go back where they were.");
  }

  @Test
  void allIsWhatTheEngineHas() {
    ReadyLayouts.all().stream()
        .filter(layout -> !layout.mainCaps())
        .findFirst()
        .ifPresent(
            split -> {
              model.layout(split);
              model.trackAll(PartKind.all());
              assertThat(model.tracks(PartKind.MAIN_CAP)).isFalse();
              assertThat(model.untagged()).isEmpty();
            });
    assertThat(model.tracks(PartKind.KEEPERS)).isTrue();
  }
}
