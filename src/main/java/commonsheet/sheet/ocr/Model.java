package commonsheet.sheet.ocr;

import ai.onnxruntime.OnnxTensor;
import ai.onnxruntime.OrtEnvironment;
import ai.onnxruntime.OrtException;
import ai.onnxruntime.OrtSession;
import commonsheet.sheet.RecogniserException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.FloatBuffer;
import java.util.Map;

/** One network, loaded from the models in the jar. */
final class Model implements AutoCloseable {
  private final OrtEnvironment environment;
  private final OrtSession session;
  private final String input;

  private Model(OrtEnvironment environment, OrtSession session) {
    this.environment = environment;
    this.session = session;
    this.input = session.getInputNames().iterator().next();
  }

  /**
   * Loads a network.
   *
   * @param name of its file among the models
   * @throws RecogniserException if this machine cannot run it
   */
  static Model load(String name) {
    try (InputStream in = Model.class.getResourceAsStream("/models/" + name);
        OrtSession.SessionOptions options = new OrtSession.SessionOptions()) {
      if (in == null) {
        throw new RecogniserException("the jar has no model " + name + "; fetch it again", null);
      }
      // Small pictures side by side use the processors better than one picture on all of them.
      options.setIntraOpNumThreads(1);
      options.setInterOpNumThreads(1);
      options.setMemoryPatternOptimization(false);
      OrtEnvironment environment = OrtEnvironment.getEnvironment();
      return new Model(environment, environment.createSession(in.readAllBytes(), options));
    } catch (IOException | OrtException | LinkageError e) {
      throw new RecogniserException(
          "this copy of Commonsheet cannot run on "
              + System.getProperty("os.name")
              + " "
              + System.getProperty("os.arch")
              + "; build it for that platform",
          e);
    }
  }

  /**
   * Values of the network's first output.
   *
   * @param shape of the values there
   */
  record Output(float[] values, long[] shape) {}

  /**
   * Runs the network on a picture, on the thread that calls.
   *
   * @param values the picture's planes, one after another
   */
  Output run(FloatBuffer values, int height, int width) {
    long[] shape = {1, 3, height, width};
    try (OnnxTensor tensor = OnnxTensor.createTensor(environment, values, shape);
        OrtSession.Result result = session.run(Map.of(input, tensor))) {
      OnnxTensor first = (OnnxTensor) result.get(0);
      FloatBuffer buffer = first.getFloatBuffer();
      float[] out = new float[buffer.remaining()];
      buffer.get(out);
      return new Output(out, first.getInfo().getShape());
    } catch (OrtException e) {
      throw new RecogniserException("a picture could not be worked on: " + e.getMessage(), e);
    }
  }

  @Override
  public void close() {
    try {
      session.close();
    } catch (OrtException e) {
      throw new RecogniserException("it could not be closed", e);
    }
  }
}
