package wherefrom.workings.catalogue;

import java.util.List;
import wherefrom.workings.InputText;
import wherefrom.workings.InputsReading;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Result;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingAnswer;

/** Asks a working with texts, as the command line does. */
public final class Ask {
  private Ask() {}

  public static WorkingAnswer answer(String key, String... texts) {
    Working working = Workings.find(key).orElseThrow();
    InputsReading reading = InputText.read(working, List.of(texts));
    if (reading instanceof InputsReading.NotUnderstood not) {
      return not.nonsense();
    }
    return working.compute(((InputsReading.Understood) reading).inputs());
  }

  public static Result result(String key, String... texts) {
    WorkingAnswer answer = answer(key, texts);
    if (answer instanceof Result result) {
      return result;
    }
    throw new AssertionError(key + " answered " + answer);
  }

  static double value(String valueKey, String key, String... texts) {
    return result(key, texts).getValue(valueKey).value();
  }

  static Nonsense nonsense(String key, String... texts) {
    return (Nonsense) answer(key, texts);
  }
}
