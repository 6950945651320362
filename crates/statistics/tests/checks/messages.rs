//! What an error says to whoever calls the crate.

use quarterturn_statistics::distributions::DistributionError;
use quarterturn_statistics::{
    AnovaError, HarmonicError, MixedError, Sample, SampleError, SpreadError, harmonic_aliases,
};

#[test]
fn samples_and_spreads() {
    let said = |error: SampleError| error.to_string();
    assert_eq!(said(SampleError::Empty), "the sample is empty; at least one observation is needed");
    assert_eq!(
        said(SampleError::NotFinite { position: 2, value: f64::INFINITY }),
        "observation 3 is inf, which is not a finite number"
    );
    assert_eq!(
        SpreadError::TooFewPoints { points: 3 }.to_string(),
        "3 points, no two of them in one group; a spread needs two"
    );
    assert_eq!(
        SpreadError::NoScatter { sum_of_squares: 0.0 }.to_string(),
        "the squared distances sum to 0; a spread needs points that do not all coincide"
    );
    assert_eq!(
        AnovaError::NoScatter.to_string(),
        "the values do not scatter within any group; some must differ"
    );
}

#[test]
fn distributions() {
    let (value, largest) = (0.0, 1e6);
    assert_eq!(
        DistributionError::DegreesOfFreedom { value, largest }.to_string(),
        "0 degrees of freedom; more than 0 and at most 1e6 are needed"
    );
    assert_eq!(
        DistributionError::Noncentrality { value: -1.0, largest }.to_string(),
        "a noncentrality of -1; it lies between 0 and 1e6"
    );
}

#[test]
fn harmonics() {
    let said = |error: HarmonicError| error.to_string();
    assert_eq!(
        said(HarmonicError::CountsDiffer { angles: 3, values: 4 }),
        "3 angles for 4 values; each value needs its angle"
    );
    assert_eq!(
        said(HarmonicError::TooFewValues { values: 4, unknowns: 5 }),
        "4 values for 5 unknowns; take more values or fewer harmonics"
    );
    assert_eq!(
        said(HarmonicError::TooMany { harmonics: 99, most: 8 }),
        "99 harmonics; at most 8 can be told apart here"
    );
    let quarters = [0.0, 1.0, 2.0, 3.0].map(|k| k * std::f64::consts::FRAC_PI_2);
    let alias = harmonic_aliases(&Sample::new(quarters.to_vec()).unwrap(), 2).unwrap().remove(0);
    let told = said(HarmonicError::Aliased { alias, positions: 4 });
    assert!(told.starts_with("4 different positions: "), "{told}");
    assert!(told.ends_with("; take fewer harmonics or other positions"), "{told}");
}

#[test]
fn mixed_models() {
    let said = |error: MixedError| error.to_string();
    assert_eq!(
        said(MixedError::TooFewRows { rows: 2, effects: 2 }),
        "2 rows for 2 fixed effects; take at least one effect and more rows than effects"
    );
    assert_eq!(
        said(MixedError::Absent { column: 0 }),
        "random covariate 1 is zero in every row; leave it out"
    );
    let many = said(MixedError::TooManyLevels { levels: 90, coefficients: 30 });
    assert!(many.starts_with("90 levels with 30 coefficients each; at most "), "{many}");
    assert!(
        many.ends_with(" coefficients in all can be kept, so make the larger factor the blocks"),
        "{many}"
    );
    assert_eq!(
        said(MixedError::NoScatter),
        "the model fits the response exactly; without scatter there is no variance to estimate"
    );
    assert_eq!(
        said(MixedError::Confounded),
        "the design cannot tell the variances apart; group more rows together or leave a random covariate out"
    );
    assert_eq!(
        said(MixedError::NotConverged { steps: 200 }),
        "no optimum after 200 steps; take more rows for as many coefficients, or check the response for values of \
         another size"
    );
}
