package wherefrom.ui.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Arrangement;
import wherefrom.engine.Layout;
import wherefrom.engine.LayoutFault;
import wherefrom.engine.LifterType;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.RockerMount;

/** Every field of a layout can be changed, and what is wrong stands in its row. */
class LayoutDraftTest {
  private final LayoutDraft draft =
      new LayoutDraft(ReadyLayouts.find("v8-odd-even").orElseThrow().copyAs("mine", "Mine"));

  private List<String> wrongRows() {
    return LayoutFields.of(draft).stream()
        .filter(row -> !row.faults().isEmpty())
        .map(row -> row.what().name())
        .distinct()
        .toList();
  }

  @Test
  void aCopyOfAReadyLayoutIsSound() {
    assertThat(draft.faults()).isEmpty();
    assertThat(wrongRows()).isEmpty();
  }

  @Test
  void eachFieldChangesAloneAndTheOthersStay() {
    draft.cylinders(0, "1 2 3 4");
    draft.cylinders(1, "5,6,7,8");
    draft.valves(1, "ei ie ei ie");
    draft.firingOrder("1-5-4-2-6-3-7-8");
    draft.leadingBank("right");
    draft.count(LayoutDraft.Count.THRUST_MAIN, 3);
    draft.mainCaps(false);
    draft.lifters(LifterType.ROLLER);
    draft.rockers(RockerMount.SHAFT);
    draft.vee(72);
    Layout layout = draft.layout();
    assertThat(draft.faults()).isEmpty();
    assertThat(layout.banks().get(0).cylinders()).containsExactly(1, 2, 3, 4);
    assertThat(layout.banks().get(1).valves()).isEqualTo("EIIEEIIE");
    assertThat(layout.firingOrder()).containsExactly(1, 5, 4, 2, 6, 3, 7, 8);
    assertThat(layout.leadingBank()).isEqualTo("right");
    assertThat(layout.mains()).isEqualTo(5);
    assertThat(layout.thrustMain()).isEqualTo(3);
    assertThat(layout.rodJournals()).isEqualTo(4);
    assertThat(layout.camBearings()).isEqualTo(5);
    assertThat(layout.mainCaps()).isFalse();
    assertThat(layout.vee()).isEqualTo(72);
    assertThat(layout.lifters()).isEqualTo(LifterType.ROLLER);
    assertThat(layout.rockers()).isEqualTo(RockerMount.SHAFT);
  }

  @Test
  void aFaultStandsInTheRowOfItsField() {
    draft.count(LayoutDraft.Count.THRUST_MAIN, 9);
    assertThat(wrongRows()).containsExactly("THRUST_MAIN");
    draft.count(LayoutDraft.Count.THRUST_MAIN, 5);
    draft.firingOrder("1 8 4 3 6 5 7");
    assertThat(wrongRows()).containsExactly("FIRING_ORDER");
  }

  /** Every field that the check can name has a row: no fault can stay unseen. */
  @Test
  void everyFaultOfAThoroughlyWrongLayoutIsShownInSomeRow() {
    draft.name("Not Good");
    draft.title("");
    draft.bankName(1, "left");
    draft.cylinders(0, "1 1 5");
    draft.valves(1, "EE");
    draft.leadingBank("middle");
    draft.firingOrder("1 2 3");
    for (LayoutDraft.Count count : LayoutDraft.Count.values()) {
      draft.count(count, 99);
    }
    List<String> shown =
        LayoutFields.of(draft).stream().flatMap(row -> row.faults().stream()).toList();
    assertThat(draft.faults()).hasSizeGreaterThan(8);
    assertThat(shown).containsAll(draft.faults().stream().map(LayoutFault::sentence).toList());
  }

  @Test
  void wordsThatAreNoNumbersAreRefusedAndNothingChanges() {
    Layout before = draft.layout();
    assertThatThrownBy(() -> draft.cylinders(0, "one two")).hasMessageContaining("cylinders:");
    assertThatThrownBy(() -> draft.firingOrder("1-8-x")).hasMessageContaining("firingOrder:");
    assertThat(draft.layout()).isEqualTo(before);
  }

  @Test
  void anInlineEngineHasOneBankAndAVTwo() {
    draft.arrange(Arrangement.INLINE);
    assertThat(draft.layout().banks()).hasSize(1);
    assertThat(draft.layout().cylinders()).hasSize(8);
    assertThat(draft.faults()).isEmpty();
    draft.arrange(Arrangement.OPPOSED);
    assertThat(draft.layout().banks()).hasSize(2);
    assertThat(draft.faults()).isEmpty();
  }
}
