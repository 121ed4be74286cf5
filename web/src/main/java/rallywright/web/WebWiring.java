package rallywright.web;

import org.springframework.boot.SpringBootConfiguration;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.boot.security.autoconfigure.UserDetailsServiceAutoConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import rallywright.web.page.PrecompiledPages;

/** The parts of the server and how they hang together. */
@SpringBootConfiguration
@EnableAutoConfiguration(exclude = UserDetailsServiceAutoConfiguration.class)
@ComponentScan
public class WebWiring {

  /** Finds the page templates that the build compiled. */
  @Bean
  PrecompiledPages pages() {
    return new PrecompiledPages();
  }
}
