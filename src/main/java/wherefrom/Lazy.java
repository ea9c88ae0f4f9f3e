package wherefrom;

import java.util.Optional;
import java.util.function.Supplier;

/** Makes a thing when it is first asked for, and only once; safe for several threads. */
final class Lazy<T> implements Supplier<T> {
  private final Supplier<T> make;
  private Optional<T> made = Optional.empty();

  Lazy(Supplier<T> make) {
    this.make = make;
  }

  @Override
  public synchronized T get() {
    T thing = made.orElseGet(make);
    made = Optional.of(thing);
    return thing;
  }
}
