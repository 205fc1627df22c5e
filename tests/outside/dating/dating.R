# Compares libcore/dating with R's base packages: autocorrelation, autoregression, correlation, the falling exponential, and
# the smoothing spline from dense matrices. Data: R's own `treering` (normalised ring widths in dimensionless units, from
# the data set's help page), and made-up numbers. Needs build/release/bin/dating_numbers, or PITHWARD_BIN.

bin <- Sys.getenv("PITHWARD_BIN", "build/release/bin")
program <- file.path(bin, "dating_numbers")
if (!file.exists(program)) stop("there is no ", program, "; build it first")

ours <- function(arguments, values) {
  lines <- system2(program, arguments, input = sprintf("%.17g", values), stdout = TRUE)
  parts <- strsplit(lines, " ")
  setNames(lapply(parts, function(p) as.numeric(p[-1])), vapply(parts, `[`, "", 1))
}

failures <- 0
check <- function(what, ours, theirs, tolerance) {
  distance <- if (length(ours) == length(theirs)) max(abs(ours - theirs)) else Inf
  good <- is.finite(distance) && distance <= tolerance
  cat(sprintf("%-44s %s  farthest apart %.3g, allowed %.3g\n", what, if (good) "ok    " else "FAILED", distance, tolerance))
  if (!good) failures <<- failures + 1
}

# Autocorrelation and autoregression, on all of treering and on a short piece of it.
for (n in c(length(treering), 250)) {
  x <- as.numeric(treering)[seq_len(n)]
  found <- ours("autoregression", x)
  model <- ar(x, method = "yule-walker")
  name <- function(what) sprintf("%s, treering 1 to %d", what, n)
  check(name("acf"), found$acf, as.numeric(acf(x, lag.max = 20, plot = FALSE)$acf), 1e-12)
  check(name("order"), found$order, model$order, 0)
  check(name("coefficients"), found$coefficients, as.numeric(model$ar), 1e-10)
  check(name("variance"), found$variance, as.numeric(model$var.pred), 1e-10)
  check(name("AIC less the least"), found$aic - min(found$aic), as.numeric(model$aic), 1e-6)
  left <- (model$order + 1):n
  check(name("innovations"), found$innovations[left] - mean(x), as.numeric(model$resid)[left], 1e-10)
}

# Correlation, t and the probability of chance.
set.seed(1)
a <- rnorm(60)
b <- 0.4 * a + rnorm(60)
found <- ours("agreement", as.vector(rbind(a, b)))
test <- cor.test(a, b, alternative = "greater")
check("r", found$r, unname(test$estimate), 1e-14)
check("t", found$t, unname(test$statistic), 1e-12)
check("chance", found$chance, test$p.value, 1e-14)

# The falling exponential, by nls from a near start.
t <- 0:149
w <- 2.2 * exp(-0.035 * t) + 0.7 + 0.1 * rnorm(150)
fit <- nls(w ~ A * exp(-B * t) + K, start = list(A = 2, B = 0.03, K = 0.6), control = nls.control(tol = 1e-6))
check("falling exponential", ours("exponential", w)$curve, as.numeric(fitted(fit)), 1e-5)

# The spline, by its definition: (I + stiffness Q R^-1 Q') curve = values (Reinsch 1967).
x <- as.numeric(treering)[1:300]
n <- length(x)
Q <- matrix(0, n, n - 2)
R <- matrix(0, n - 2, n - 2)
for (j in 1:(n - 2)) {
  Q[j:(j + 2), j] <- c(1, -2, 1)
  R[j, j] <- 2 / 3
  if (j < n - 2) R[j, j + 1] <- R[j + 1, j] <- 1 / 6
}
c50 <- cos(2 * pi / 32)
stiffness <- (2 + c50) / (12 * (1 - c50)^2)
dense <- solve(diag(n) + stiffness * Q %*% solve(R, t(Q)), x)
check("spline of 32 years, treering 1 to 300", ours(c("spline", "32"), x)$curve, as.numeric(dense), 1e-9)

cat(if (failures == 0) "all agree\n" else sprintf("%d differ\n", failures))
quit(status = if (failures == 0) 0 else 1)
