package wherefrom.logbook;

import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.ChangePlanned;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.size.ChangeText;

/** Changes, as they stand in the file: the size within the words that were said. */
final class ChangeForms {
  private ChangeForms() {}

  static void register(DomainModule module) {
    module.form(
        ChangePlanned.class,
        Fields.class,
        planned -> Fields.of(planned.plan(), planned.change()),
        fields -> new ChangePlanned(fields.plan(), fields.read()));
    module.form(
        ChangeMade.class,
        Fields.class,
        made -> Fields.of(made.plan(), made.change()),
        fields -> new ChangeMade(fields.plan(), fields.read()));
  }

  record Fields(int plan, ChangeKind change, String where, String detail) {
    static Fields of(int plan, Change change) {
      return new Fields(plan, change.kind(), change.where(), change.detail());
    }

    Change read() {
      return ChangeText.ofLogbook(change, where, detail);
    }
  }
}
