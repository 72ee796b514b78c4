#![no_main]
libfuzzer_sys::fuzz_target!(|data: &[u8]| cure_reckoner_tests::oracles::calendar(data));
