# The stages of the CI by name, for those who have `just`; without it, `.ci/run STAGE` is the same.

# Everything that a change must pass
all:
    .ci/run

# Formatting
format:
    .ci/run format

# Clippy, nothing allowed
lints:
    .ci/run lints

# All tests
tests:
    .ci/run tests

# The API documents
docs:
    .ci/run docs

# The documents as a book
book:
    .ci/run book

# Spelling
spelling:
    .ci/run spelling

# The command of the README, in an empty folder
main:
    .ci/run main

# What needs more than Rust alone
validate:
    .ci/run validate

# What is given to others: the program, its pages and completions, with checksums
release:
    .ci/release
