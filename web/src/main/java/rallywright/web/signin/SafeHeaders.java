package rallywright.web.signin;

import jakarta.servlet.DispatcherType;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.LoginUrlAuthenticationEntryPoint;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.header.writers.StaticHeadersWriter;

/** Who may open what, and the headers that keep a browser strict. */
@Configuration
class SafeHeaders {

  private static final String CONTENT_RULES =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src"
          + " 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; form-action"
          + " 'self'; base-uri 'none'; frame-ancestors 'none'";

  @Bean
  SecurityFilterChain rules(HttpSecurity http) {
    return http.authorizeHttpRequests(
            who ->
                who.dispatcherTypeMatchers(DispatcherType.ERROR)
                    .permitAll()
                    .requestMatchers("/sign-in", "/css/**", "/js/**", "/fonts/**", "/favicon.svg")
                    .permitAll()
                    .anyRequest()
                    .hasRole("COACH"))
        .exceptionHandling(
            strangers ->
                strangers.authenticationEntryPoint(
                    new LoginUrlAuthenticationEntryPoint("/sign-in")))
        .headers(
            headers ->
                headers
                    .contentSecurityPolicy(rules -> rules.policyDirectives(CONTENT_RULES))
                    .referrerPolicy(policy -> policy.policy(ReferrerPolicy.NO_REFERRER))
                    .addHeaderWriter(new StaticHeadersWriter("X-Robots-Tag", "noindex")))
        .requestCache(cache -> cache.disable())
        .logout(out -> out.disable())
        .build();
  }
}
