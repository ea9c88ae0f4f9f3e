package wherefrom.rules.before;

import java.util.List;

/** One way of reading the tests. */
interface SignRule {
  List<Symptom> signs(TestsBefore tests);
}
