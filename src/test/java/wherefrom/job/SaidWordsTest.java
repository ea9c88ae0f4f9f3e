package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnitAccess;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.entry.BackFromShop;
import wherefrom.job.entry.CostDropped;
import wherefrom.job.entry.DebrisFound;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.PartLost;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.entry.PlanDropped;
import wherefrom.job.entry.TagReissued;
import wherefrom.parts.PartKind;
import wherefrom.rules.debris.DebrisLook;
import wherefrom.rules.debris.DebrisPlace;

/** What a person says is shown again: words that only the file keeps are lost to the bench. */
class SaidWordsTest {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(location -> !location.contains("test-classes"))
          .importPackages("wherefrom");

  /** The stock of a print is chosen, not said; nothing is shown by it. */
  private static final Set<String> NOT_SAID = Set.of("TagsPrinted.stock");

  @Test
  void everyTextOfAnEntryIsReadBySomebody() {
    Set<String> read = read();
    Set<String> unread =
        texts().filter(text -> !read.contains(text)).collect(Collectors.toCollection(TreeSet::new));
    assertThat(unread).isEqualTo(NOT_SAID);
  }

  private static Stream<String> texts() {
    return Arrays.stream(JobEntry.class.getPermittedSubclasses())
        .flatMap(
            kind ->
                Arrays.stream(kind.getRecordComponents())
                    .filter(component -> component.getType() == String.class)
                    .map(RecordComponent::getName)
                    .map(name -> kind.getSimpleName() + "." + name));
  }

  /**
   * What code outside of the file's own reader and writer asks of an entry, or of several kinds.
   */
  private static Set<String> read() {
    return CLASSES.stream()
        .filter(type -> !type.getPackageName().equals("wherefrom.logbook"))
        .flatMap(SaidWordsTest::asked)
        .flatMap(
            asked ->
                Arrays.stream(JobEntry.class.getPermittedSubclasses())
                    .filter(kind -> asked.getTargetOwner().isAssignableFrom(kind))
                    .map(kind -> kind.getSimpleName() + "." + asked.getTarget().getName()))
        .collect(Collectors.toSet());
  }

  private static Stream<JavaCodeUnitAccess<?>> asked(JavaClass type) {
    return Stream.concat(
            type.getMethodCallsFromSelf().stream(), type.getMethodReferencesFromSelf().stream())
        .filter(access -> access.getTargetOwner().getPackageName().equals("wherefrom.job.entry"))
        .filter(access -> !access.getTargetOwner().isEquivalentTo(JobEntry.class));
  }

  @Test
  void whatAPersonSaidStandsBehindWhatHappened() {
    OpenJob job = BenchJob.whole(ReadyLayouts.all().get(0), PartKind.alwaysOn());
    assertThat(
            Stream.of(
                    new PartLost(1, "under the bench"),
                    new PartUnfitted(1, "it would not turn"),
                    new TagReissued(1, 2, "tag torn"),
                    new BackFromShop(1, List.of(1), "polished"),
                    new PlanDropped(2, "too dear"),
                    new CostDropped(3, "noted twice"),
                    new DebrisFound(
                        DebrisPlace.PICKUP_SCREEN, DebrisLook.GREY_PASTE, "under the screen"))
                .map(entry -> EntryWords.of(job.state(), entry)))
        .allMatch(words -> words.endsWith(")"))
        .anyMatch(words -> words.endsWith(" lost (under the bench)"))
        .anyMatch(words -> words.endsWith(" taken out again (it would not turn)"))
        .anyMatch(words -> words.endsWith(" printed again, issue 2 (tag torn)"))
        .anyMatch(words -> words.endsWith(" back from the machine shop, visit 1 (polished)"))
        .contains("plan 2 dropped (too dear)", "cost line 3 struck out (noted twice)");
    assertThat(EntryWords.of(job.state(), new PlanDropped(2, ""))).isEqualTo("plan 2 dropped");
  }
}
