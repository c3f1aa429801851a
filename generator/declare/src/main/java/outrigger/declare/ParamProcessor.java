package outrigger.declare;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Set;
import javax.annotation.processing.AbstractProcessor;
import javax.annotation.processing.RoundEnvironment;
import javax.annotation.processing.SupportedAnnotationTypes;
import javax.lang.model.SourceVersion;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.RecordComponentElement;
import javax.lang.model.element.TypeElement;
import javax.tools.Diagnostic;

/**
 * Writes {@code XDeclared} beside each record {@code X} whose every component carries {@code @Param}, nested ones left out.
 */
@SupportedAnnotationTypes(ParamProcessor.PARAM)
public final class ParamProcessor extends AbstractProcessor {
  static final String PARAM = "outrigger.generator.param.Param";

  @Override
  public SourceVersion getSupportedSourceVersion() {
    return SourceVersion.latestSupported();
  }

  @Override
  public boolean process(Set<? extends TypeElement> annotations, RoundEnvironment round) {
    for (Element element : round.getRootElements()) {
      if (element.getKind() == ElementKind.RECORD && element instanceof TypeElement record) {
        List<? extends RecordComponentElement> components = record.getRecordComponents();
        if (!components.isEmpty() && components.stream().allMatch(DeclaredSource::isParameter)) {
          write(record);
        }
      }
    }
    return false;
  }

  private void write(TypeElement record) {
    DeclaredSource source = new DeclaredSource(record, processingEnv.getElementUtils(), processingEnv.getTypeUtils());
    try (Writer file = processingEnv.getFiler().createSourceFile(source.qualifiedName(), record).openWriter()) {
      file.write(source.text());
    } catch (IOException e) {
      processingEnv.getMessager().printMessage(Diagnostic.Kind.ERROR, "cannot be written: " + e, record);
    }
  }
}
