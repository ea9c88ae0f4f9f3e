package wherefrom.phone;

import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import wherefrom.job.LogbookException;
import wherefrom.job.phone.PhoneBench;
import wherefrom.job.phone.PhoneHost;

/**
 * How a phone joins: it says the key, sees the number and the job's name, and is given a cookie.
 */
final class Entrance {
  /** 256 bits. */
  private static final int COOKIE_BYTES = 32;

  private static final int LONGEST_NAME = 24;
  private static final int BUSY = 503;

  private final PhoneHost host;
  private final Invitations invitations;
  private final Sessions sessions;
  private final LongSupplier nanos;
  private final Consumer<byte[]> random;

  Entrance(
      PhoneHost host,
      Invitations invitations,
      Sessions sessions,
      LongSupplier nanos,
      Consumer<byte[]> random) {
    this.host = host;
    this.invitations = invitations;
    this.sessions = sessions;
    this.nanos = nanos;
    this.random = random;
  }

  /** Whoever has the key may see which job it is for. */
  Response hello(Map<String, String> said, String address) throws Refused {
    Invitations.Key key = invitations.check(said.getOrDefault("key", ""), address);
    return Response.json(PhoneJson.object(Map.of("job", host.name(), "number", key.number())));
  }

  /**
   * The key is used up once there is a bench, and the phone has its own cookie from now on.
   *
   * @throws Refused with the key as it was, where no bench is to be had
   */
  Response join(Map<String, String> said, String address) throws Refused {
    String key = said.getOrDefault("key", "");
    invitations.check(key, address);
    if (sessions.isFull()) {
      throw full();
    }
    String cookie = Secret.words(random, COOKIE_BYTES);
    Session in = add(name(said.getOrDefault("name", "")), cookie);
    try {
      invitations.use(key, address);
    } catch (Refused other) {
      sessions.remove(in.number());
      throw other;
    }
    if (!sessions.isFull()) {
      invitations.renew();
    }
    host.changed();
    return Response.json("{}")
        .with("Set-Cookie", Gate.COOKIE + "=" + cookie + "; Path=/; HttpOnly; SameSite=Strict");
  }

  private Session add(String name, String cookie) throws Refused {
    PhoneBench bench = bench(name);
    Optional<Session> in = sessions.add(name, cookie, bench, nanos.getAsLong());
    if (in.isEmpty()) {
      bench.close();
      throw full();
    }
    return in.get();
  }

  private PhoneBench bench(String name) throws Refused {
    try {
      return host.bench(name);
    } catch (LogbookException none) {
      throw new Refused(BUSY, "Not joined. " + none.getMessage());
    }
  }

  private static Refused full() {
    return new Refused(BUSY, "As many phones as may have joined. Put one out first.");
  }

  /** Only what can be read as a name, and no more of it than there is room for. */
  private static String name(String typed) {
    String plain = typed.replaceAll("[^\\p{L}\\p{N} .'-]", "").strip();
    return plain.substring(0, Math.min(LONGEST_NAME, plain.length())).strip();
  }
}
