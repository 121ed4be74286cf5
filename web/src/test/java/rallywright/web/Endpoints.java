package rallywright.web;

import java.lang.reflect.Method;
import java.lang.reflect.Parameter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.springframework.beans.factory.config.BeanDefinition;
import org.springframework.context.annotation.ClassPathScanningCandidateComponentProvider;
import org.springframework.core.annotation.AnnotatedElementUtils;
import org.springframework.core.type.filter.AnnotationTypeFilter;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.bind.annotation.RequestParam;

/** Every address that the server answers, read from its own classes: none can be forgotten. */
final class Endpoints {

  private Endpoints() {}

  /**
   * One address.
   *
   * @param method GET or POST
   * @param path with names of parts in braces
   * @param asked the names of its parameters
   */
  record Endpoint(String method, String path, List<String> asked) {}

  /** All of them, in a fixed order. */
  static List<Endpoint> all() {
    var scanner = new ClassPathScanningCandidateComponentProvider(false);
    scanner.addIncludeFilter(new AnnotationTypeFilter(Controller.class));
    List<Endpoint> all = new ArrayList<>();
    for (BeanDefinition each : scanner.findCandidateComponents("rallywright.web")) {
      try {
        for (Method method : Class.forName(each.getBeanClassName()).getDeclaredMethods()) {
          all.addAll(of(method));
        }
      } catch (ClassNotFoundException impossible) {
        throw new IllegalStateException(impossible);
      }
    }
    all.sort(Comparator.comparing(Endpoint::path).thenComparing(Endpoint::method));
    return all;
  }

  private static List<Endpoint> of(Method method) {
    RequestMapping mapping =
        AnnotatedElementUtils.findMergedAnnotation(method, RequestMapping.class);
    if (mapping == null) {
      return List.of();
    }
    List<String> asked =
        Arrays.stream(method.getParameters())
            .filter(each -> each.isAnnotationPresent(RequestParam.class))
            .map(Endpoints::name)
            .toList();
    List<Endpoint> all = new ArrayList<>();
    for (String path : mapping.path()) {
      for (RequestMethod each : mapping.method()) {
        all.add(new Endpoint(each.name(), path, asked));
      }
    }
    return all;
  }

  private static String name(Parameter parameter) {
    RequestParam given = AnnotatedElementUtils.findMergedAnnotation(parameter, RequestParam.class);
    return given == null || given.name().isEmpty() ? parameter.getName() : given.name();
  }
}
