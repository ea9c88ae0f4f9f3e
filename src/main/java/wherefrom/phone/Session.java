package wherefrom.phone;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import wherefrom.job.phone.PhoneBench;

/** A phone that has joined: one act at a time, and each act once. */
final class Session {
  /** So many of the last acts are known by their ids. */
  private static final int ACTS = 64;

  private final int number;
  private final String name;
  private final Secret token;
  private final PhoneBench bench;
  private final Bucket requests;
  private final ReentrantLock turn = new ReentrantLock(true);
  private final Map<String, Response> acts =
      new LinkedHashMap<>() {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Response> eldest) {
          return size() > ACTS;
        }
      };
  private volatile long seen;
  private volatile boolean out;

  /**
   * @param number from 1
   * @param name as its person typed it; may be empty
   */
  Session(int number, String name, Secret token, PhoneBench bench, Bucket requests, long now) {
    this.number = number;
    this.name = name;
    this.token = token;
    this.bench = bench;
    this.requests = requests;
    this.seen = now;
  }

  int number() {
    return number;
  }

  String name() {
    return name;
  }

  PhoneBench bench() {
    return bench;
  }

  boolean isOf(String cookie) {
    return token.is(cookie);
  }

  /** Counts a request. */
  boolean take(long now) {
    seen = now;
    return requests.take(now);
  }

  /** When it was heard of last. */
  long seen() {
    return seen;
  }

  /** It was put out or has left: what it asked for and waits for its turn is not begun. */
  boolean isOut() {
    return out;
  }

  /** Lets go of its bench; what is being written there is waited for, and nothing after that. */
  void end() {
    out = true;
    bench.close();
  }

  /** Held while something is done for this phone. */
  ReentrantLock turn() {
    return turn;
  }

  /** What an act was answered with; to be asked in its turn. */
  Optional<Response> findDone(String act) {
    return Optional.ofNullable(acts.get(act));
  }

  /** An act was done: sent again, it is answered alike and not done again. */
  Response done(String act, Response answer) {
    acts.put(act, answer);
    return answer;
  }
}
