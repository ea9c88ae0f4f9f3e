package wherefrom.scan.decode;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class TagWordsTest {
  /** Made up once as the class is loaded, so asked of a class loader of its own. */
  @Test
  void theyAreMadeUpWhereverDigitsAreWrittenInAnotherWay() throws Exception {
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.forLanguageTag("fa-u-nu-arabext"));
    try {
      assertThat(String.format("%03d", 12)).isNotEqualTo("012");
      Class<?> fresh = new FreshClasses().loadClass(TagWords.class.getName());
      Class.forName(fresh.getName(), true, fresh.getClassLoader());
      assertThat(fresh).isNotSameAs(TagWords.class);
    } finally {
      Locale.setDefault(before);
    }
  }

  /** Loads this one class anew. */
  private static final class FreshClasses extends ClassLoader {
    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
      if (!name.equals(TagWords.class.getName())) {
        return super.loadClass(name, resolve);
      }
      String file = name.replace('.', '/') + ".class";
      try (java.io.InputStream in = TagWords.class.getClassLoader().getResourceAsStream(file)) {
        byte[] code = java.util.Objects.requireNonNull(in).readAllBytes();
        return defineClass(name, code, 0, code.length);
      } catch (java.io.IOException e) {
        throw new ClassNotFoundException(name, e);
      }
    }
  }
}
