package wherefrom.phone;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import wherefrom.inspection.Subject;
import wherefrom.job.LogbookException;
import wherefrom.job.UnsentException;
import wherefrom.job.phone.PhoneBench;
import wherefrom.job.phone.PhoneDeed;
import wherefrom.job.phone.PhoneHost;
import wherefrom.job.phone.PhonePictures.BadPicture;
import wherefrom.job.phone.PhonePictures.NotKept;
import wherefrom.job.phone.PhonePictures.Seen;
import wherefrom.parts.TagCode;

/** Does what a phone that has joined asks for, in its turn, and each act once. */
final class PhoneActions {
  /** So many pictures are read at once; the others wait. */
  private static final int READ_AT_ONCE = 2;

  private static final int WAIT_SECONDS = 20;
  private static final int BAD = 400;
  private static final int NOT_DONE = 409;
  private static final int NO_PICTURE = 422;
  private static final int BUSY = 503;
  private static final String ACT = "[A-Za-z0-9_-]{16,64}";

  /** Something that is done for a phone; what then stands on it follows. */
  @FunctionalInterface
  private interface Deed {
    void run() throws Exception;
  }

  private final PhoneHost host;
  private final Semaphore reading = new Semaphore(READ_AT_ONCE, true);

  PhoneActions(PhoneHost host) {
    this.host = host;
  }

  /** What stands on the phone, as things are now. */
  Response state(Session phone) throws Exception {
    return inTurn(phone, () -> shown(phone, phone.bench()::refresh));
  }

  /** Does what a key says. */
  Response act(Session phone, Map<String, String> asked) throws Exception {
    PhoneDeed deed =
        PhoneDeed.find(asked.getOrDefault("deed", ""))
            .orElseThrow(() -> new Refused(BAD, "That is not understood here."));
    String with = asked.getOrDefault("with", "");
    String act = asked.getOrDefault("id", "");
    return once(phone, act, () -> phone.bench().act(act, deed, with));
  }

  /** Reads the tags on a picture. */
  Response read(Session phone, String act, Path picture) throws Exception {
    return once(
        phone,
        act,
        () -> {
          List<TagCode> issued = phone.bench().issued();
          Supplier<List<TagCode>> elsewhere = phone.bench().printedElsewhere();
          Seen seen = slowly(phone, () -> host.pictures().read(picture, issued, elsewhere));
          phone.bench().read(act, seen.codes(), seen.hint());
        });
  }

  /** Files a picture with what it shows. */
  Response keep(Session phone, String act, String key, Path picture) throws Exception {
    return once(
        phone,
        act,
        () -> {
          Subject subject = phone.bench().require(key);
          String name = slowly(phone, () -> host.pictures().keep(host.folder(), picture));
          phone.bench().keep(act, subject, name);
        });
  }

  private <T> T slowly(Session phone, Callable<T> work) throws Exception {
    reading.acquire();
    try {
      requireIn(phone);
      return work.call();
    } finally {
      reading.release();
    }
  }

  /** It may have been put out while it waited. */
  private static void requireIn(Session phone) throws Refused {
    if (phone.isOut()) {
      throw Refused.notJoined();
    }
  }

  private Response once(Session phone, String act, Deed deed) throws Exception {
    if (!act.matches(ACT)) {
      throw new Refused(BAD, "That is not understood here.");
    }
    return inTurn(
        phone,
        () -> {
          Optional<Response> before = phone.findDone(act);
          return before.isPresent() ? before.get() : phone.done(act, did(phone, deed));
        });
  }

  /** What was refused is not done: sent again, it is tried again. */
  private Response did(Session phone, Deed deed) throws Exception {
    try {
      deed.run();
    } catch (UnsentException away) {
      throw new Refused(BUSY, String.valueOf(away.getMessage()));
    } catch (LogbookException e) {
      requireIn(phone);
      throw new Refused(NOT_DONE, String.valueOf(e.getMessage()));
    } catch (BadPicture e) {
      throw new Refused(NO_PICTURE, String.valueOf(e.getMessage()));
    } catch (NotKept e) {
      throw new Refused(Refused.NO_ROOM, String.valueOf(e.getMessage()));
    } catch (IllegalArgumentException e) {
      throw new Refused(BAD, String.valueOf(e.getMessage()));
    }
    return shown(phone, () -> phone.bench().view());
  }

  private Response inTurn(Session phone, Callable<Response> work) throws Exception {
    if (!phone.turn().tryLock(WAIT_SECONDS, TimeUnit.SECONDS)) {
      throw new Refused(BUSY, "Not done yet. Try again.");
    }
    try {
      requireIn(phone);
      return work.call();
    } finally {
      phone.turn().unlock();
    }
  }

  private Response shown(Session phone, Callable<?> made) throws Exception {
    made.call();
    PhoneBench bench = phone.bench();
    return Response.json(
        PhoneJson.of(
            bench.view(),
            bench.work(),
            host.name(),
            bench.subject().map(Subject::key),
            bench.subjectWords()));
  }
}
