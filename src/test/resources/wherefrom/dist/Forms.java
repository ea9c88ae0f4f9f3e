package forms;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import java.util.function.BinaryOperator;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntBinaryOperator;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.function.LongSupplier;
import java.util.function.LongUnaryOperator;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.function.UnaryOperator;

/** Every form of lambda and method reference, each with what it gives when it is called. */
public final class Forms {
  /** A form, as made, and what a call of it gives. */
  public record Form(Object made, Callable<Object> call) {}

  private final Map<String, Form> forms = new LinkedHashMap<>();
  private final String field;
  private int counted;

  private Forms(String field) {
    this.field = field;
  }

  /** By name. */
  public static Map<String, Form> all() {
    Forms it = new Forms("field");
    it.capturing(7, 1L << 40, 2.5, 'x', (byte) 3, true, "text", new int[] {4, 5});
    it.free();
    it.references();
    it.inInterfaces();
    it.inNests();
    it.ofOtherKinds();
    return it.forms;
  }

  private <T> void add(String name, T made, Function<T, Object> call) {
    forms.put(name, new Form(made, () -> call.apply(made)));
  }

  private void capturing(
      int i, long l, double d, char c, byte b, boolean yes, String text, int[] list) {
    Supplier<String> mixed = () -> i + " " + l + " " + d + c + b + yes + text + list[1];
    add("captures of every width", mixed, Supplier::get);
    Supplier<String> own = () -> field + ++counted;
    add("captures its object", own, it -> it.get() + it.get());
    IntBinaryOperator sum = (x, y) -> x * y + i;
    add("primitives in and out", sum, it -> it.applyAsInt(6, 7));
    LongUnaryOperator wide = x -> x + l;
    add("wide primitives", wide, it -> it.applyAsLong(1));
    Supplier<Supplier<String>> nested = () -> () -> text + i;
    add("a lambda in a lambda", nested, it -> it.get().get());
    Supplier<String> bound = text::toUpperCase;
    add("a bound reference", bound, Supplier::get);
    Consumer<String> none = null;
    try {
      Consumer<String> refused = none::accept;
      add("a bound reference to null", refused, it -> "made");
    } catch (NullPointerException e) {
      add("a bound reference to null", (Supplier<String>) () -> "refused", Supplier::get);
    }
  }

  private void free() {
    Runnable nothing = () -> {};
    add(
        "captures nothing",
        nothing,
        it -> {
          it.run();
          return "ran";
        });
    Supplier<Object>[] twice = new Supplier[2];
    for (int at = 0; at < 2; at++) {
      twice[at] = () -> "one";
    }
    add("one for all", twice[0], it -> it == twice[1]);
    BiFunction<Integer, Long, Double> boxed = (x, y) -> x + y + 0.5;
    add("boxed in and out", boxed, it -> it.apply(1, 2L));
    IntFunction<Integer> box = x -> x + 1;
    add("boxes what it gives", box, it -> it.apply(41));
    Callable<Void> thrower =
        () -> {
          throw new IOException("thrown");
        };
    add(
        "throws what is checked",
        thrower,
        it -> {
          try {
            return it.call();
          } catch (Exception e) {
            return e.toString();
          }
        });
  }

  private static boolean isEven(int number) {
    return number % 2 == 0;
  }

  private long count() {
    return ++counted;
  }

  private void references() {
    IntPredicate even = Forms::isEven;
    add("a private static method", even, it -> it.test(4) + " " + it.test(5));
    LongSupplier count = this::count;
    add("a private method of this", count, LongSupplier::getAsLong);
    Runnable dropped = this::count;
    add(
        "a result that is dropped",
        dropped,
        it -> {
          it.run();
          return "ran";
        });
    Function<String, Integer> length = String::length;
    add("a method of its first parameter", length, it -> it.apply("four"));
    ToIntFunction<String> plain = String::length;
    add("the same, unboxed", plain, it -> it.applyAsInt("four"));
    Function<Integer, Integer> unboxes = Math::abs;
    add("unboxes and boxes", unboxes, it -> it.apply(-5));
    ToDoubleFunction<Double> value = Double::doubleValue;
    add("a method of a box", value, it -> it.applyAsDouble(1.5));
    Supplier<List<String>> empty = ArrayList::new;
    add("a constructor", empty, it -> it.get());
    Function<String, Form> made = name -> new Form(name, () -> name);
    add("a constructor in a lambda", made, it -> it.apply("kept").made());
    Function<Integer, StringBuilder> sized = StringBuilder::new;
    add("a constructor that unboxes", sized, it -> it.apply(9).capacity());
    IntFunction<int[]> array = int[]::new;
    add("an array", array, it -> it.apply(3).length);
    UnaryOperator<int[]> copy = int[]::clone;
    add("the copy of an array", copy, it -> it.apply(new int[] {8})[0]);
    Function<List<String>, Integer> size = List::size;
    add("a method of an interface", size, it -> it.apply(List.of("a", "b")));
    Predicate<Object> is = "it"::equals;
    add("a bound method of a class", is, it -> it.test("it"));
    BinaryOperator<Integer> most = Math::max;
    add("an overloaded method", most, it -> it.apply(2, 3));
    Comparator<String> order = String::compareTo;
    add("a default method of what is made", order.reversed(), it -> it.compare("a", "b"));
  }

  /** Lambdas in what an interface says. */
  public interface Polite {
    String name();

    default Supplier<String> greeting() {
      return () -> "Dear " + name() + end();
    }

    default Supplier<String> named() {
      return this::name;
    }

    static Supplier<String> farewell() {
      return () -> "Yours" + dot();
    }

    private String end() {
      return ",";
    }

    private static String dot() {
      return ".";
    }
  }

  private void inInterfaces() {
    Polite polite = () -> "reader";
    add("an interface with defaults", polite, it -> it.greeting().get());
    add("in a default method", polite.greeting(), Supplier::get);
    add("a reference in a default method", polite.named(), Supplier::get);
    add("in a static method of an interface", Polite.farewell(), Supplier::get);
  }

  private static class Outer {
    private final int secret;

    Outer(int secret) {
      this.secret = secret;
    }

    protected String said() {
      return "outer " + secret;
    }

    private final class Inner {
      private Supplier<Integer> look() {
        return () -> secret + 1;
      }
    }
  }

  private static final class Heir extends Outer {
    Heir() {
      super(5);
    }

    @Override
    protected String said() {
      return "heir";
    }

    Supplier<String> ofSuper() {
      return super::said;
    }
  }

  private enum Size {
    SMALL(x -> x),
    LARGE(x -> x * 100);

    private final UnaryOperator<Integer> grows;

    Size(UnaryOperator<Integer> grows) {
      this.grows = grows;
    }
  }

  private void inNests() {
    add("what is private in a nest", new Outer(4).new Inner().look(), Supplier::get);
    add("the method of a super class", new Heir().ofSuper(), Supplier::get);
    add("in an enum", Size.LARGE.grows, it -> it.apply(2));
    Supplier<Runnable> anonymous =
        () ->
            new Runnable() {
              private final Supplier<String> inner = () -> field;

              @Override
              public void run() {
                counted += inner.get().length();
              }
            };
    add(
        "in a class without a name",
        anonymous,
        it -> {
          counted = 0;
          it.get().run();
          return counted;
        });
  }

  /** Has no method. */
  public interface Marked {}

  private static Object copied(Object it) {
    try {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      new ObjectOutputStream(bytes).writeObject(it);
      return new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray())).readObject();
    } catch (IOException | ClassNotFoundException e) {
      return e;
    }
  }

  private static <T> Object copiedAndGot(Supplier<T> it) {
    return copied(it) instanceof Supplier<?> copy ? copy.get() : "no copy";
  }

  /** What a plain class cannot say alike: it must stay as it was. */
  private void ofOtherKinds() {
    String text = "kept";
    Supplier<String> serial = (Supplier<String> & Serializable) () -> text + "!";
    add("KEPT serializable", serial, Forms::copiedAndGot);
    Supplier<String> marked = (Supplier<String> & Marked) () -> text;
    add("KEPT intersection", marked, it -> it.get() + (it instanceof Marked));
    Function<Integer, Long> widens = Forms::half;
    add("KEPT widened after unboxing", widens, it -> it.apply(8));
    IntFunction<Object> wider = Long::valueOf;
    add("KEPT widened", wider, it -> it.apply(6));
  }

  private static Long half(long number) {
    return number / 2;
  }
}
