package outrigger.generator.param;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;

/**
 * What a record declares, read from its annotations: for records nested in others, which the compiler makes no code of.
 *
 * @param type the record
 */
record Reflected<R extends Record>(Class<R> type) implements Declared<R> {
  @Override
  public List<Declaration> declarations() {
    List<Declaration> declarations = new ArrayList<>();
    for (RecordComponent component : type.getRecordComponents()) {
      Param p = component.getAnnotation(Param.class);
      if (p == null) {
        throw new IllegalArgumentException(type.getSimpleName() + "." + component.getName() + " has no @Param");
      }
      declarations.add(new Declaration(component.getName(), component.getType(), element(component), p.unit(), p.min(),
          p.max(), p.def(), p.help()));
    }
    return declarations;
  }

  private static Class<?> element(RecordComponent component) {
    Type generic = component.getGenericType();
    return generic instanceof ParameterizedType list && list.getActualTypeArguments()[0] instanceof Class<?> element
        ? element : component.getType();
  }

  @Override
  public R make(List<Object> values) {
    RecordComponent[] components = type.getRecordComponents();
    Class<?>[] types = new Class<?>[components.length];
    for (int i = 0; i < types.length; i++) {
      types[i] = components[i].getType();
    }
    try {
      Constructor<R> constructor = type.getDeclaredConstructor(types);
      constructor.setAccessible(true);
      return constructor.newInstance(values.toArray());
    } catch (InvocationTargetException e) {
      throw e.getCause() instanceof RuntimeException refusal ? refusal : new IllegalStateException(e.getCause());
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(type + " cannot be built", e);
    }
  }
}
