package hingeleaf.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hingeleaf.pack.Pack;
import hingeleaf.pack.SamplePacks;
import hingeleaf.pack.Stopped;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Work that is stopped, or that takes too long, ends; it does not only go unheard. */
@Timeout(60)
class StopTest {
  private final CountDownLatch begun = new CountDownLatch(1);
  private final CountDownLatch ended = new CountDownLatch(1);

  /** Works on a pack until it is told to stop, as a long stage does. */
  private boolean lasts(Ask.Held held) throws InterruptedException {
    Ask.uses(held);
    begun.countDown();
    try {
      while (true) {
        held.pack.goOn();
        Thread.sleep(5);
      }
    } finally {
      ended.countDown();
    }
  }

  private static Ask.Held held() {
    AtomicBoolean halt = new AtomicBoolean();
    return new Ask.Held(Pack.of(SamplePacks.example("fair-winds.yaml").inputs(), halt::get), halt);
  }

  @Test
  void stoppingEndsTheWork() throws Exception {
    try (Reckoner reckoner = new Reckoner(1, 30)) {
      CompletableFuture<Boolean> asked =
          CompletableFuture.supplyAsync(() -> reckoner.run("question-1", () -> lasts(held())));
      assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
      reckoner.stop("question-1");
      assertThat(ended.await(10, TimeUnit.SECONDS)).isTrue();
      assertThatThrownBy(asked::join).hasRootCauseInstanceOf(Refusal.class);
      assertThat(reckoner.run(() -> 7)).as("its thread is free again").isEqualTo(7);
    }
  }

  @Test
  void takingTooLongEndsTheWork() throws Exception {
    try (Reckoner reckoner = new Reckoner(1, 1)) {
      assertThatThrownBy(() -> reckoner.run(() -> lasts(held())))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("too long");
      assertThat(ended.await(10, TimeUnit.SECONDS)).isTrue();
    }
  }

  @Test
  void workThatAnotherWaitsForGoesOn() throws Exception {
    Ask.Held shared = held();
    try (Reckoner reckoner = new Reckoner(2, 30)) {
      CountDownLatch both = new CountDownLatch(2);
      CountDownLatch go = new CountDownLatch(1);
      CompletableFuture<Double> other =
          CompletableFuture.supplyAsync(
              () ->
                  reckoner.run(
                      "question-2",
                      () -> {
                        Ask.uses(shared);
                        both.countDown();
                        go.await();
                        return shared.pack.card().mass();
                      }));
      CompletableFuture<Boolean> mine =
          CompletableFuture.supplyAsync(
              () ->
                  reckoner.run(
                      "question-3",
                      () -> {
                        Ask.uses(shared);
                        both.countDown();
                        go.await();
                        return true;
                      }));
      assertThat(both.await(10, TimeUnit.SECONDS)).isTrue();
      reckoner.stop("question-3");
      go.countDown();
      assertThat(other.join()).isPositive();
      assertThat(mine).failsWithin(10, TimeUnit.SECONDS);
    }
  }

  /** Twelve frames lie flat in 2^12 ways: a stop need not wait for all of them. */
  @Test
  void aFoldStageIsStoppedInItsMiddle() {
    AtomicLong asked = new AtomicLong();
    AtomicLong patience = new AtomicLong(Long.MAX_VALUE);
    Pack pack =
        Pack.of(
            SamplePacks.example("into-the-wood.yaml").inputs(),
            () -> asked.incrementAndGet() > patience.get());
    pack.made();
    patience.set(asked.get() + 100); // of the 158 looks that the search takes
    assertThatThrownBy(pack::flats).isInstanceOf(Stopped.class);
    assertThat(asked.get()).as("the work ends with the first no").isEqualTo(patience.get() + 1);
    patience.set(Long.MAX_VALUE);
    assertThat(pack.flats().count()).isEqualTo(4096);
    pack.best();
    patience.set(asked.get() + 10);
    assertThatThrownBy(pack::touches).isInstanceOf(Stopped.class);
    assertThat(asked.get()).isEqualTo(patience.get() + 1);
    patience.set(Long.MAX_VALUE);
    assertThat(pack.touches()).isPresent();
  }

  @Test
  void aStoppedPackKeepsNothingHalfDone() {
    AtomicBoolean halt = new AtomicBoolean();
    Pack pack = Pack.of(SamplePacks.example("fair-winds.yaml").inputs(), halt::get);
    halt.set(true);
    assertThatThrownBy(pack::sheets).isInstanceOf(Stopped.class);
    halt.set(false);
    assertThat(pack.sheets()).isNotEmpty();
  }
}
