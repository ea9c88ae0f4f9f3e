package wherefrom.logbook;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.DeserializationConfig;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializationConfig;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.BeanDeserializerModifier;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.BeanSerializerModifier;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;
import wherefrom.inspection.Subject;
import wherefrom.parts.Place;
import wherefrom.quantity.Amount;
import wherefrom.rules.VerdictName;
import wherefrom.rules.consequence.Article;

/** How the types of the domain stand in the file, so that the domain need not know. */
final class DomainModule extends SimpleModule {
  DomainModule() {
    addSerializer(Place.class, new KeyForm.Writer<>(Place.class, Place::key));
    addDeserializer(Place.class, new KeyForm.Reader<Place>(Place.class, Place::find));
    addSerializer(Spot.class, new KeyForm.Writer<>(Spot.class, Spot::key));
    addDeserializer(Spot.class, new KeyForm.Reader<Spot>(Spot.class, Spots::find));
    addSerializer(Amount.class, new KeyForm.Writer<>(Amount.class, Amount::text));
    addDeserializer(Amount.class, new KeyForm.Reader<Amount>(Amount.class, AmountFields::find));
    addSerializer(
        Subject.Beside.class, new KeyForm.Writer<>(Subject.Beside.class, Subject.Beside::key));
    addDeserializer(
        Subject.Beside.class,
        new KeyForm.Reader<Subject.Beside>(Subject.Beside.class, Subject::findBeside));
    addSerializer(Article.class, new KeyForm.Writer<>(Article.class, Article::id));
    addDeserializer(
        Article.class,
        new KeyForm.Reader<Article>(Article.class, text -> Optional.of(Article.read(text))));
    addSerializer(Optional.class, new OptionalForm.Writer());
    addDeserializer(Optional.class, new OptionalForm.Reader());
    addSerializer(Set.class, new SortedSets());
    FitForms.register(this);
    MeasureForms.register(this);
    ShopForms.register(this);
    GoodsForms.register(this);
    ChangeForms.register(this);
    setSerializerModifier(new EnumKeys());
    setDeserializerModifier(new EnumsByKey());
  }

  /** An entry that stands in the file with the fields of another record. */
  <E, F> void form(Class<E> type, Class<F> fields, Function<E, F> form, Function<F, E> entry) {
    addSerializer(type, new EntryForm.Writer<>(type, form));
    addDeserializer(type, new EntryForm.Reader<>(type, fields, entry));
  }

  /** The key of an enum constant: its id, or {@code rod-shell} for {@code ROD_SHELL}. */
  static String key(Enum<?> constant) {
    return constant instanceof VerdictName verdict
        ? verdict.id()
        : constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static final class EnumKeys extends BeanSerializerModifier {
    @Override
    public JsonSerializer<?> modifyEnumSerializer(
        SerializationConfig config,
        JavaType type,
        BeanDescription description,
        JsonSerializer<?> usual) {
      return new KeyForm.Writer<>(Enum.class, DomainModule::key);
    }
  }

  private static final class EnumsByKey extends BeanDeserializerModifier {
    @Override
    public JsonDeserializer<?> modifyEnumDeserializer(
        DeserializationConfig config,
        JavaType type,
        BeanDescription description,
        JsonDeserializer<?> usual) {
      return new KeyForm.Reader<Object>(type.getRawClass(), key -> find(type.getRawClass(), key));
    }

    private static Optional<?> find(Class<?> type, String key) {
      return Arrays.stream(type.getEnumConstants())
          .filter(constant -> key((Enum<?>) constant).equals(key))
          .findFirst();
    }
  }

  /** Sets keep no order of their own: sorted, the same entry always gives the same line. */
  @SuppressWarnings("rawtypes")
  private static final class SortedSets extends StdSerializer<Set> {
    SortedSets() {
      super(Set.class);
    }

    @Override
    public void serialize(Set value, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      @SuppressWarnings("unchecked")
      List<?> sorted = ((Set<Object>) value).stream().sorted().toList();
      provider.defaultSerializeValue(sorted, out);
    }
  }
}
