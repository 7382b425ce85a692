//! Random numbers that are the same every time: to the bit where they are even, and but for the rounding of a machine's
//! own logarithm and cosine where they follow a bell curve.

/// A stream of random numbers from a seed.
///
/// # Method
/// Xoshiro256++ of Blackman and Vigna (2019), filled by SplitMix64; the name of a stream is mixed into the seed with
/// FNV-1a, so that a stream does not change when another one is asked more.
#[derive(Debug, Clone)]
pub struct Random {
    state: [u64; 4],
}

impl Random {
    /// The stream of this name under a seed.
    pub fn new(seed: u64, stream: &str) -> Self {
        let mut mixed = stream
            .bytes()
            .fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| (hash ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3))
            ^ seed.wrapping_mul(0x9e37_79b9_7f4a_7c15);
        let state = std::array::from_fn(|_| {
            mixed = mixed.wrapping_add(0x9e37_79b9_7f4a_7c15);
            let mut word = mixed;
            word = (word ^ (word >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
            word = (word ^ (word >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
            word ^ (word >> 31)
        });
        Self { state }
    }

    fn word(&mut self) -> u64 {
        let [a, b, c, d] = self.state;
        let result = a.wrapping_add(d).rotate_left(23).wrapping_add(a);
        let [c, d] = [c ^ a, d ^ b];
        self.state = [a ^ d, b ^ c, c ^ (b << 17), d.rotate_left(45)];
        result
    }

    /// Evenly between two numbers.
    pub fn uniform(&mut self, low: f64, high: f64) -> f64 {
        let share = (self.word() >> 11) as f64 / (1_u64 << 53) as f64;
        low + (high - low) * share
    }

    /// From a bell curve with mean 0 and standard deviation 1 (Box and Muller).
    pub fn normal(&mut self) -> f64 {
        let radius = (-2.0 * (1.0 - self.uniform(0.0, 1.0)).ln()).sqrt();
        radius * self.uniform(0.0, std::f64::consts::TAU).cos()
    }

    /// Whether something happens that has this probability.
    pub fn happens(&mut self, probability: f64) -> bool {
        self.uniform(0.0, 1.0) < probability
    }

    /// A whole number from `low` to `high`, both possible.
    pub fn whole(&mut self, low: usize, high: usize) -> usize {
        let many = (high - low + 1) as f64;
        low + (self.uniform(0.0, many) as usize).min(high - low)
    }

    /// One of some things; panics on none, which no caller has.
    pub fn one_of<T: Copy>(&mut self, things: &[T]) -> T {
        things[self.whole(0, things.len() - 1)]
    }

    /// A direction, evenly over the sphere.
    pub fn direction(&mut self) -> glam::DVec3 {
        let height = self.uniform(-1.0, 1.0);
        let around = self.uniform(0.0, std::f64::consts::TAU);
        let flat = (1.0 - height * height).sqrt();
        glam::DVec3::new(flat * around.cos(), flat * around.sin(), height)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Numbers computed apart from this code, with whole numbers in Python, by the published steps.
    #[test]
    fn the_stream_is_the_published_one() {
        let mut random = Random { state: [1, 2, 3, 4] };
        let words: [u64; 5] = std::array::from_fn(|_| random.word());
        assert_eq!(
            words,
            [41_943_041, 58_720_359, 3_588_806_011_781_223, 3_591_011_842_654_386, 9_228_616_714_210_784_205]
        );
    }

    #[test]
    fn seed_and_name_both_count() {
        let first = |seed, name| Random::new(seed, name).word();
        assert_eq!(first(1, "phone"), first(1, "phone"));
        assert_ne!(first(1, "phone"), first(2, "phone"));
        assert_ne!(first(1, "phone"), first(1, "person"));
    }

    #[test]
    fn the_bell_curve_has_its_mean_and_spread() {
        let mut random = Random::new(7, "bell");
        let many: Vec<f64> = (0..20_000).map(|_| random.normal()).collect();
        let mean = many.iter().sum::<f64>() / 20_000.0;
        let variance = many.iter().map(|value| (value - mean).powi(2)).sum::<f64>() / 20_000.0;
        // Five standard errors: 5/√20000 and 5·√(2/20000).
        assert!(mean.abs() < 0.036 && (variance - 1.0).abs() < 0.05, "{mean} {variance}");
    }

    #[test]
    fn whole_numbers_reach_both_ends() {
        let mut random = Random::new(3, "ends");
        let many: Vec<usize> = (0..400).map(|_| random.whole(2, 4)).collect();
        assert!([2, 3, 4].iter().all(|wanted| many.contains(wanted)));
        assert!(many.iter().all(|found| (2..=4).contains(found)));
    }
}
