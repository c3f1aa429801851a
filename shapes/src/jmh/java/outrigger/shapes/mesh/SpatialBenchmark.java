package outrigger.shapes.mesh;

import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The spatial way, from numbers to operands, Booleans, rounding, proof and the bytes of the file, on one thread; memory is
 * cleared on that thread too, as the launcher has it. What is called but once an evaluation is fully compiled only after
 * some thousand of them: hence the long warming up.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = {"-Xmx4g", "-XX:+UseSerialGC"})
@Warmup(iterations = 6, time = 5)
@Measurement(iterations = 4, time = 2)
public class SpatialBenchmark {
  @Param({"spacer", "tower", "tray", "random-prisms", "tray-heavy", "plate-10", "plate-100", "plate-1000", "plate-10000",
      "sphere-1000", "sphere-10000", "sphere-100000", "sphere-1000000", "spheres-1000", "spheres-10000",
      "spheres-100000"})
  private String part;
  private ReferencePart read;

  @Setup
  public void read() throws IOException {
    read = ReferencePart.of(BenchParts.text(part));
  }

  @Benchmark
  public byte[] toBytes() {
    return BenchParts.bytes(read);
  }
}
