package wherefrom.ui.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Subject;
import wherefrom.job.inspect.Inspecting.Unlooked;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.subject.Group;

/** What is left to look at is found by its kind, and none of it is lost on the way. */
class InspectModelTest {
  private final InspectModel model = new InspectModel(SampleJob.apart().job);

  @Test
  void everythingLeftStandsInOneGroup() {
    List<Subject> left = model.unlooked().stream().map(Unlooked::subject).toList();

    assertThat(model.grouped(model.unlooked()).stream().flatMap(group -> group.subjects().stream()))
        .isNotEmpty()
        .containsExactlyInAnyOrderElementsOf(left);
  }

  @Test
  void severalOfAThingAreNamedInThePlural() {
    assertThat(model.groups())
        .extracting(Group::words)
        .contains("Rockers", "Cam lobes", "Valve seats and guides", "Piston rings", "Crankshaft")
        .doesNotContain("Cam lobe", "Rocker stud", "Compression");
  }

  @Test
  void whatIsLookedAtBeforeWashingStandsInOneGroupToo() {
    List<Subject> left = model.beforeWashing().stream().map(Unlooked::subject).toList();

    assertThat(
            model.grouped(model.beforeWashing()).stream()
                .flatMap(group -> group.subjects().stream()))
        .isNotEmpty()
        .containsExactlyInAnyOrderElementsOf(left);
  }

  @Test
  void aGroupWithNothingLeftIsNotShown() {
    assertThat(model.grouped(List.of())).isEmpty();
  }
}
