# What every pair at every shift would cost in a plain R loop over `cor`: 2,000 random pair-shifts, scaled. Prints seconds.
set.seed(1)
series <- 1000
years <- 300
least <- 30
x <- matrix(rnorm(series * years), years, series)
n <- 2000
i <- sample(series, n, TRUE)
j <- sample(series, n, TRUE)
shift <- sample(seq(-(years - least), years - least), n, TRUE)
r <- numeric(n)
loop <- function() {
  for (k in seq_len(n)) {
    a <- max(1, 1 + shift[k]):min(years, years + shift[k])
    r[k] <- cor(x[a - shift[k], i[k]], x[a, j[k]])
  }
  r
}
invisible(loop())
took <- system.time(loop())[["elapsed"]]
all <- series * (series - 1) / 2 * (2 * (years - least) + 1)
cat(sprintf("%d pair-shifts in %.3f s; all %.4g would take %.0f s\n", n, took, all, took / n * all))
