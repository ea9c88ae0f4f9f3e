package wherefrom.job.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.engine.ReadyLayouts;
import wherefrom.inspection.Decision;
import wherefrom.job.BenchJob;
import wherefrom.job.OpenJob;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.handling.Handling;
import wherefrom.job.handling.NewPart;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.size.ChangeText;

/** A piston that is replaced brings a set of rings onto the list, and never two. */
class PistonRingsTest {
  private final OpenJob job =
      BenchJob.whole(ReadyLayouts.find("v8-odd-even").orElseThrow(), PartKind.all());

  private Part piston(String key) {
    return job.state().parts().stream()
        .map(record -> record.part())
        .filter(part -> part.home().key().equals(key) && !part.fresh())
        .findFirst()
        .orElseThrow();
  }

  private List<String> rings() {
    return new Buying(job.state())
        .lines().stream()
            .filter(line -> line.what().words().contains("ring sets"))
            .map(line -> line.words() + ": " + line.reason())
            .toList();
  }

  private void condemn(String key) {
    job.record(new DecisionMade(piston(key).item(), Decision.REPLACE, "scuffed"));
  }

  @Test
  void eachReplacedPistonWantsASet() {
    assertThat(rings()).isEmpty();
    condemn("piston@B1");
    assertThat(rings()).containsExactly("1 piston ring set: a new piston wants new rings");
    condemn("piston@B4");
    assertThat(rings()).containsExactly("2 piston ring sets: a new piston wants new rings");
  }

  @Test
  void theSetIsStillWantedWhenThePistonIsHere() {
    condemn("piston@B1");
    Part old = piston("piston@B1");
    new Handling(job).replace(old.item(), "scuffed", NewPart.asListed(job.state(), old));
    assertThat(new ReplacementList(job.state()).lines()).isEmpty();
    assertThat(rings()).hasSize(1).first().asString().startsWith("1 piston ring set");
  }

  @Test
  void aBoredBlockAsksForTheSameSetsInItsOwnSort() {
    condemn("piston@B1");
    new Planning(job).make(ChangeText.read(ChangeKind.BORED, "B3", "0.030 in", Unit.INCH));
    assertThat(rings()).hasSize(1).first().asString().startsWith("8 piston ring sets, oversize");
  }
}
