package wherefrom.phone;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.security.SecureRandom;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.phone.PhoneDoor;
import wherefrom.job.phone.Phones;
import wherefrom.job.phone.Phones.Medium;
import wherefrom.job.phone.Phones.Nearby;
import wherefrom.parts.TagCode;
import wherefrom.scan.grease.PhotographFiles;
import wherefrom.ui.sample.SampleJob;

/** An engine apart on a bench, and a door open to it on this computer. */
abstract class DoorBench {
  static final Nearby HERE = new Nearby("127.0.0.1", Medium.UNKNOWN, "this computer");

  @TempDir Path folder;

  final SampleJob sample = SampleJob.apart();
  BenchHost host;
  PhoneDoor door;

  @BeforeEach
  void open() throws IOException {
    host = new BenchHost(sample, folder);
    door = phones().open(HERE, host);
  }

  @AfterEach
  void close() {
    door.close();
  }

  /** What opens the door. */
  Phones phones() {
    return new HttpPhones(System::nanoTime, new SecureRandom()::nextBytes);
  }

  String link() {
    return door.invitation().orElseThrow().link();
  }

  /** A phone that has joined under a name, which may be empty. */
  Caller joined(String name) {
    Caller phone = new Caller(door.address());
    assertThat(phone.join(link(), name).status()).isEqualTo(200);
    return phone;
  }

  /** How many entries the job has, those of phones among them. */
  long entries() {
    sample.job.catchUp();
    return sample.job.sequence();
  }

  /** A photograph of the tag of the part at a place. */
  byte[] photograph(String place) {
    return PhotographFiles.jpeg(1600, TagCode.find(sample.tag(place)), 1);
  }
}
