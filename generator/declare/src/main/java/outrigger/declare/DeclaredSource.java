package outrigger.declare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.lang.model.element.AnnotationMirror;
import javax.lang.model.element.Element;
import javax.lang.model.element.RecordComponentElement;
import javax.lang.model.element.TypeElement;
import javax.lang.model.element.VariableElement;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.TypeMirror;
import javax.lang.model.util.Elements;
import javax.lang.model.util.Types;

/** The source of the class that lists what a record declares and makes the record. */
final class DeclaredSource {
  private static final String PARAM_PACKAGE = "outrigger.generator.param.";

  private final TypeElement record;
  private final Elements elements;
  private final Types types;

  DeclaredSource(TypeElement record, Elements elements, Types types) {
    this.record = record;
    this.elements = elements;
    this.types = types;
  }

  static boolean isParameter(RecordComponentElement component) {
    return component.getAnnotationMirrors().stream().anyMatch(DeclaredSource::isParam);
  }

  private static boolean isParam(AnnotationMirror annotation) {
    return ((TypeElement) annotation.getAnnotationType().asElement()).getQualifiedName()
        .contentEquals(ParamProcessor.PARAM);
  }

  String qualifiedName() {
    return record.getQualifiedName() + "Declared";
  }

  String text() {
    String name = record.getSimpleName().toString();
    List<String> declarations = new ArrayList<>();
    List<String> arguments = new ArrayList<>();
    for (RecordComponentElement component : record.getRecordComponents()) {
      arguments.add("(" + component.asType() + ") values.get(" + arguments.size() + ")");
      declarations.add(declaration(component));
    }
    return "package " + elements.getPackageOf(record).getQualifiedName() + ";\n\n"
        + "/** What {@link " + name + "} declares, made from it by the compiler. */\n"
        + "public final class " + name + "Declared implements " + PARAM_PACKAGE + "Declared<" + name + "> {\n"
        + "  @Override\n"
        + "  public java.util.List<" + PARAM_PACKAGE + "Declaration> declarations() {\n"
        + "    return java.util.List.of(\n        " + String.join(",\n        ", declarations) + ");\n  }\n\n"
        + "  @Override\n"
        + "  @SuppressWarnings(\"unchecked\")\n"
        + "  public " + name + " make(java.util.List<Object> values) {\n"
        + "    return new " + name + "(\n        " + String.join(",\n        ", arguments) + ");\n  }\n}\n";
  }

  /** In the order of the components of {@code Declaration}. */
  private String declaration(RecordComponentElement component) {
    AnnotationMirror param = component.getAnnotationMirrors().stream().filter(DeclaredSource::isParam).findFirst()
        .orElseThrow();
    Map<String, String> values = new LinkedHashMap<>();
    elements.getElementValuesWithDefaults(param)
        .forEach((key, value) -> values.put(key.getSimpleName().toString(), literal(value.getValue())));
    return "new " + PARAM_PACKAGE + "Declaration(" + literal(component.getSimpleName().toString()) + ", "
        + type(component.asType()) + ", " + values.get("unit") + ", " + values.get("min") + ", " + values.get("max") + ", "
        + values.get("def") + ", " + values.get("help") + ")";
  }

  private String literal(Object value) {
    if (value instanceof VariableElement constant) {
      Element type = constant.getEnclosingElement();
      return type + "." + constant.getSimpleName();
    }
    return elements.getConstantExpression(value);
  }

  /** The class of the component, and that of its elements: its own again where it is no list. */
  private String type(TypeMirror type) {
    boolean isList = type instanceof DeclaredType declared && !declared.getTypeArguments().isEmpty();
    TypeMirror element = isList ? ((DeclaredType) type).getTypeArguments().get(0) : type;
    return types.erasure(type) + ".class, " + types.erasure(element) + ".class";
  }
}
